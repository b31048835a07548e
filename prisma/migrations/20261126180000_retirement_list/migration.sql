-- Who started an organiser's event, who stopped, where and why: one list for each event, put in place of the one before as
-- a whole. It names cars and no people, and nobody but its organiser sees it.
CREATE TABLE retirement_list (
  organiser_id uuid NOT NULL,
  event_id uuid NOT NULL,
  source text NOT NULL,
  records jsonb NOT NULL,
  saved_by uuid NOT NULL,
  saved_at timestamptz(3) NOT NULL,
  CONSTRAINT retirement_list_pkey PRIMARY KEY (organiser_id, event_id),
  CONSTRAINT retirement_list_organiser_id_event_id_fkey FOREIGN KEY (organiser_id, event_id) REFERENCES published_event (organiser_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT retirement_list_organiser_id_saved_by_fkey FOREIGN KEY (organiser_id, saved_by) REFERENCES organiser_membership (organiser_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);

ALTER TABLE retirement_list ENABLE ROW LEVEL SECURITY;
ALTER TABLE retirement_list FORCE ROW LEVEL SECURITY;
CREATE POLICY retirement_list_own ON retirement_list TO halfshaft_app USING (organiser_id = current_organiser()) WITH CHECK (organiser_id = current_organiser());
GRANT SELECT, INSERT, UPDATE ON retirement_list TO halfshaft_app;
