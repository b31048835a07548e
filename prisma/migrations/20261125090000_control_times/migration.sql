-- What the controls wrote for a car: the actual times that lateness and the out-times of service count from.
CREATE TABLE control_time (
  team_id uuid NOT NULL,
  id text NOT NULL,
  event_id uuid NOT NULL,
  entry_id uuid NOT NULL,
  body jsonb NOT NULL,
  CONSTRAINT control_time_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT control_time_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT control_time_team_id_entry_id_fkey FOREIGN KEY (team_id, entry_id) REFERENCES entry (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX control_time_team_id_event_id_idx ON control_time (team_id, event_id);
ALTER TABLE control_time ENABLE ROW LEVEL SECURITY;
ALTER TABLE control_time FORCE ROW LEVEL SECURITY;
CREATE POLICY control_time_own ON control_time TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
-- An undone first recording leaves no time at the control, so the projection may lose a row.
GRANT SELECT, INSERT, UPDATE, DELETE ON control_time TO halfshaft_app;

-- The penalties of the event as its managers set them; null: the settings most events have.
ALTER TABLE event ADD COLUMN penalty_rules jsonb;
