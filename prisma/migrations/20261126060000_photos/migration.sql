-- The pictures of photos that the log speaks of, as the server drew them anew. In the database and not in files, so that one
-- backup holds all and the fence holds them like everything of a team.
CREATE TABLE photo (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  bytes integer NOT NULL,
  image bytea NOT NULL,
  small bytea NOT NULL,
  stored_at timestamptz(3) NOT NULL,
  CONSTRAINT photo_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT photo_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX photo_team_id_event_id_idx ON photo (team_id, event_id);
-- A JPEG does not get smaller: trying would only cost time.
ALTER TABLE photo ALTER COLUMN image SET STORAGE EXTERNAL, ALTER COLUMN small SET STORAGE EXTERNAL;
ALTER TABLE photo ENABLE ROW LEVEL SECURITY;
ALTER TABLE photo FORCE ROW LEVEL SECURITY;
CREATE POLICY photo_own ON photo TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
-- Written once: the log names the file by its check sum.
GRANT SELECT, INSERT ON photo TO halfshaft_app;
