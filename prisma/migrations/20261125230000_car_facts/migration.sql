-- What is so about a car and asks nothing of anyone: incidents, new parts, lasting repairs, tyres, settings.
CREATE TABLE car_fact (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  entry_id uuid NOT NULL,
  body jsonb NOT NULL,
  CONSTRAINT car_fact_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT car_fact_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT car_fact_team_id_entry_id_fkey FOREIGN KEY (team_id, entry_id) REFERENCES entry (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX car_fact_team_id_event_id_idx ON car_fact (team_id, event_id);
ALTER TABLE car_fact ENABLE ROW LEVEL SECURITY;
ALTER TABLE car_fact FORCE ROW LEVEL SECURITY;
CREATE POLICY car_fact_own ON car_fact TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
-- An undone fact stays as withdrawn, so the projection never loses a row.
GRANT SELECT, INSERT, UPDATE ON car_fact TO halfshaft_app;
