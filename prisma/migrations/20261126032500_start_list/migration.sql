-- Start lists of an organiser's event, written once each: the newest of a section is the one that holds. Teams see them as
-- soon as the event is published.
CREATE TABLE start_list (
  organiser_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  number integer NOT NULL,
  section integer NOT NULL,
  source text NOT NULL,
  starters jsonb NOT NULL,
  saved_at timestamptz(3) NOT NULL,
  CONSTRAINT start_list_pkey PRIMARY KEY (organiser_id, id),
  CONSTRAINT start_list_organiser_id_event_id_fkey FOREIGN KEY (organiser_id, event_id) REFERENCES published_event (organiser_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT start_list_section_from_one CHECK (section BETWEEN 1 AND 99)
);
CREATE UNIQUE INDEX start_list_organiser_id_event_id_number_key ON start_list (organiser_id, event_id, number);

ALTER TABLE start_list ENABLE ROW LEVEL SECURITY;
ALTER TABLE start_list FORCE ROW LEVEL SECURITY;
CREATE POLICY start_list_own ON start_list TO halfshaft_app USING (organiser_id = current_organiser()) WITH CHECK (organiser_id = current_organiser());
CREATE POLICY start_list_public ON start_list FOR SELECT TO halfshaft_app
  USING (current_app_user() IS NOT NULL AND EXISTS (
    SELECT FROM published_event e
    WHERE e.organiser_id = start_list.organiser_id AND e.id = start_list.event_id AND e.published_at IS NOT NULL));
GRANT SELECT, INSERT ON start_list TO halfshaft_app;
