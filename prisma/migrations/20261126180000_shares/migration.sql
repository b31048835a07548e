-- What a team lets the organiser of an event it took over know of its log. `contributor` stands for the team in the organiser's
-- tables, the same at all events of one organiser, so that teams can be counted there without being named.
CREATE TABLE share (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  organiser_id uuid NOT NULL,
  contributor uuid NOT NULL,
  level text NOT NULL,
  changed_by uuid NOT NULL,
  changed_at timestamptz(3) NOT NULL,
  CONSTRAINT share_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT share_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT share_team_id_changed_by_fkey FOREIGN KEY (team_id, changed_by) REFERENCES person (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT share_level_known CHECK (level IN ('nothing', 'totals', 'rows'))
);
CREATE UNIQUE INDEX share_team_id_event_id_key ON share (team_id, event_id);
ALTER TABLE share ENABLE ROW LEVEL SECURITY;
ALTER TABLE share FORCE ROW LEVEL SECURITY;
CREATE POLICY share_own ON share TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT, UPDATE ON share TO halfshaft_app;

-- The copies themselves: counts only. What a team takes back is deleted; what it replaces stays until then, since figures that
-- were told of it are still shown.
CREATE TABLE shared_record (
  organiser_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  contributor uuid NOT NULL,
  level text NOT NULL,
  body jsonb NOT NULL,
  shared_at timestamptz(3) NOT NULL,
  CONSTRAINT shared_record_pkey PRIMARY KEY (organiser_id, id),
  CONSTRAINT shared_record_organiser_id_event_id_fkey FOREIGN KEY (organiser_id, event_id) REFERENCES published_event (organiser_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT shared_record_level_known CHECK (level IN ('totals', 'rows'))
);
CREATE INDEX shared_record_organiser_id_event_id_idx ON shared_record (organiser_id, event_id);
ALTER TABLE shared_record ENABLE ROW LEVEL SECURITY;
ALTER TABLE shared_record FORCE ROW LEVEL SECURITY;
CREATE POLICY shared_record_own ON shared_record TO halfshaft_app USING (organiser_id = current_organiser()) WITH CHECK (organiser_id = current_organiser());
GRANT SELECT, INSERT, UPDATE, DELETE ON shared_record TO halfshaft_app;

-- Which copies figures were ever told of, without the figures: whoever remembers them could subtract. Never changed or removed.
CREATE TABLE shared_release (
  organiser_id uuid NOT NULL,
  id uuid NOT NULL,
  number integer NOT NULL,
  kind text NOT NULL,
  events jsonb NOT NULL,
  parts jsonb NOT NULL,
  released_at timestamptz(3) NOT NULL,
  CONSTRAINT shared_release_pkey PRIMARY KEY (organiser_id, id),
  CONSTRAINT shared_release_organiser_id_fkey FOREIGN KEY (organiser_id) REFERENCES organiser (organiser_id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT shared_release_kind_known CHECK (kind IN ('totals', 'rows'))
);
CREATE UNIQUE INDEX shared_release_organiser_id_number_key ON shared_release (organiser_id, number);
ALTER TABLE shared_release ENABLE ROW LEVEL SECURITY;
ALTER TABLE shared_release FORCE ROW LEVEL SECURITY;
CREATE POLICY shared_release_own ON shared_release TO halfshaft_app USING (organiser_id = current_organiser()) WITH CHECK (organiser_id = current_organiser());
GRANT SELECT, INSERT ON shared_release TO halfshaft_app;
