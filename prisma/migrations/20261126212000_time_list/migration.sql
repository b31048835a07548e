-- When cars came to the time controls of an organiser's event, and how late the event lets them be: one list for each event,
-- put in place of the one before as a whole. It names cars and no people, and nobody but its organiser sees it.
CREATE TABLE time_list (
  organiser_id uuid NOT NULL,
  event_id uuid NOT NULL,
  source text NOT NULL,
  passes jsonb NOT NULL,
  max_late_minutes integer NOT NULL,
  saved_by uuid NOT NULL,
  saved_at timestamptz(3) NOT NULL,
  CONSTRAINT time_list_pkey PRIMARY KEY (organiser_id, event_id),
  CONSTRAINT time_list_organiser_id_event_id_fkey FOREIGN KEY (organiser_id, event_id) REFERENCES published_event (organiser_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT time_list_organiser_id_saved_by_fkey FOREIGN KEY (organiser_id, saved_by) REFERENCES organiser_membership (organiser_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);

ALTER TABLE time_list ENABLE ROW LEVEL SECURITY;
ALTER TABLE time_list FORCE ROW LEVEL SECURITY;
CREATE POLICY time_list_own ON time_list TO halfshaft_app USING (organiser_id = current_organiser()) WITH CHECK (organiser_id = current_organiser());
GRANT SELECT, INSERT, UPDATE ON time_list TO halfshaft_app;
