-- What came in from another server by a file: who brought it, what became of it, and what was seen of the other side then.
-- `seen` holds a check sum of each thing a manager may change there; `pictures` one of each picture that follows.
CREATE TABLE bring_in (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  brought_by uuid NOT NULL,
  brought_at timestamptz(3) NOT NULL,
  made_at timestamptz(3) NOT NULL,
  seen jsonb NOT NULL,
  pictures jsonb NOT NULL,
  report jsonb NOT NULL,
  CONSTRAINT bring_in_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT bring_in_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT bring_in_team_id_brought_by_fkey FOREIGN KEY (team_id, brought_by) REFERENCES person (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX bring_in_team_id_event_id_idx ON bring_in (team_id, event_id);
ALTER TABLE bring_in ENABLE ROW LEVEL SECURITY;
ALTER TABLE bring_in FORCE ROW LEVEL SECURITY;
CREATE POLICY bring_in_own ON bring_in TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
-- Written once: it says who brought what into the log.
GRANT SELECT, INSERT ON bring_in TO halfshaft_app;
