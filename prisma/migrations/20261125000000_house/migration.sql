-- The house: who belongs where, cars, cards, events, and the work log.
--
-- Fencing, the same for every table of a team:
--   * the primary key is (team_id, id) and every foreign and unique key leads with team_id, because foreign-key checks
--     pass through row-level security: a single-column key would let one team point at another team's row;
--   * row-level security is ENABLEd and FORCEd; the app's login owns nothing and cannot bypass it;
--   * the team is a setting local to the transaction (see packages/store/src/fence).
-- A table and its policies always come in one migration.

-- Roles. Logins and passwords are given outside the migrations (packages/store/src/migrate/logins.ts, or by hand).
DO $$
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'halfshaft_app') THEN
    CREATE ROLE halfshaft_app NOLOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOBYPASSRLS;
  END IF;
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'halfshaft_auth') THEN
    CREATE ROLE halfshaft_auth NOLOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOBYPASSRLS;
  END IF;
EXCEPTION WHEN duplicate_object OR unique_violation THEN
  NULL; -- another database of the same server is being migrated at this moment and made the role
END $$;

REVOKE CREATE ON SCHEMA public FROM PUBLIC;
GRANT USAGE ON SCHEMA public TO halfshaft_app;

CREATE FUNCTION current_team() RETURNS uuid LANGUAGE sql STABLE
  AS $$ SELECT nullif(current_setting('halfshaft.team', true), '')::uuid $$;
CREATE FUNCTION current_organiser() RETURNS uuid LANGUAGE sql STABLE
  AS $$ SELECT nullif(current_setting('halfshaft.organiser', true), '')::uuid $$;
CREATE FUNCTION current_app_user() RETURNS text LANGUAGE sql STABLE
  AS $$ SELECT nullif(current_setting('halfshaft.user', true), '') $$;
CREATE FUNCTION current_invite() RETURNS text LANGUAGE sql STABLE
  AS $$ SELECT nullif(current_setting('halfshaft.invite', true), '') $$;

-- Teams and people ---------------------------------------------------------------------------------------------------

CREATE TABLE team (
  team_id uuid NOT NULL,
  name text NOT NULL,
  created_at timestamptz(3) NOT NULL,
  CONSTRAINT team_pkey PRIMARY KEY (team_id)
);
ALTER TABLE team ENABLE ROW LEVEL SECURITY;
ALTER TABLE team FORCE ROW LEVEL SECURITY;
CREATE POLICY team_own ON team TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT, UPDATE ON team TO halfshaft_app;

-- Names live here and nowhere else: the log holds ids, so erasing a person is one update.
CREATE TABLE person (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  name text NOT NULL,
  initials text NOT NULL,
  created_at timestamptz(3) NOT NULL,
  CONSTRAINT person_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT person_team_id_fkey FOREIGN KEY (team_id) REFERENCES team (team_id) ON DELETE RESTRICT ON UPDATE CASCADE
);
ALTER TABLE person ENABLE ROW LEVEL SECURITY;
ALTER TABLE person FORCE ROW LEVEL SECURITY;
CREATE POLICY person_own ON person TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT, UPDATE ON person TO halfshaft_app;

CREATE TABLE car (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  name text NOT NULL,
  drive text NOT NULL,
  surface text NOT NULL,
  created_at timestamptz(3) NOT NULL,
  CONSTRAINT car_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT car_team_id_fkey FOREIGN KEY (team_id) REFERENCES team (team_id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT car_drive_known CHECK (drive IN ('front', 'rear', 'four')),
  CONSTRAINT car_surface_known CHECK (surface IN ('gravel', 'tarmac', 'snow'))
);
ALTER TABLE car ENABLE ROW LEVEL SECURITY;
ALTER TABLE car FORCE ROW LEVEL SECURITY;
CREATE POLICY car_own ON car TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT, UPDATE ON car TO halfshaft_app;

-- A job card or a round of one car. The intervals, looks and readings are the card's `body`, shaped by the contract.
CREATE TABLE card (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  car_id uuid NOT NULL,
  ordinal integer NOT NULL,
  body jsonb NOT NULL,
  created_at timestamptz(3) NOT NULL,
  removed_at timestamptz(3),
  CONSTRAINT card_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT card_team_id_car_id_fkey FOREIGN KEY (team_id, car_id) REFERENCES car (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX card_team_id_car_id_ordinal_idx ON card (team_id, car_id, ordinal);
ALTER TABLE card ENABLE ROW LEVEL SECURITY;
ALTER TABLE card FORCE ROW LEVEL SECURITY;
CREATE POLICY card_own ON card TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT, UPDATE ON card TO halfshaft_app;

-- Events -------------------------------------------------------------------------------------------------------------

-- An event as one team runs it. `organiser_id` and `published_event_id` say what it was taken over from; they are a
-- fact of that moment and no foreign key, which would have to cross the fence.
-- The event's official clock is ours plus `clock_offset_seconds`.
CREATE TABLE event (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  name text NOT NULL,
  time_zone text NOT NULL,
  starts_on date NOT NULL,
  clock_offset_seconds integer NOT NULL,
  organiser_id uuid,
  published_event_id uuid,
  created_at timestamptz(3) NOT NULL,
  CONSTRAINT event_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT event_team_id_fkey FOREIGN KEY (team_id) REFERENCES team (team_id) ON DELETE RESTRICT ON UPDATE CASCADE
);
ALTER TABLE event ENABLE ROW LEVEL SECURITY;
ALTER TABLE event FORCE ROW LEVEL SECURITY;
CREATE POLICY event_own ON event TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT, UPDATE ON event TO halfshaft_app;

CREATE TABLE itinerary_version (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  number integer NOT NULL,
  source jsonb NOT NULL,
  itinerary jsonb NOT NULL,
  saved_by uuid NOT NULL,
  saved_at timestamptz(3) NOT NULL,
  CONSTRAINT itinerary_version_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT itinerary_version_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT itinerary_version_team_id_saved_by_fkey FOREIGN KEY (team_id, saved_by) REFERENCES person (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE UNIQUE INDEX itinerary_version_team_id_event_id_number_key ON itinerary_version (team_id, event_id, number);
ALTER TABLE itinerary_version ENABLE ROW LEVEL SECURITY;
ALTER TABLE itinerary_version FORCE ROW LEVEL SECURITY;
CREATE POLICY itinerary_version_own ON itinerary_version TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT ON itinerary_version TO halfshaft_app;

-- One car at one event. `carried` holds, for each card, the wear it brought along from before the event.
CREATE TABLE entry (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  car_id uuid NOT NULL,
  car_number text NOT NULL,
  start_position integer NOT NULL,
  people integer NOT NULL,
  carried jsonb NOT NULL,
  created_at timestamptz(3) NOT NULL,
  CONSTRAINT entry_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT entry_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT entry_team_id_car_id_fkey FOREIGN KEY (team_id, car_id) REFERENCES car (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT entry_start_position_positive CHECK (start_position >= 1),
  CONSTRAINT entry_people_positive CHECK (people >= 1)
);
CREATE UNIQUE INDEX entry_team_id_event_id_car_id_key ON entry (team_id, event_id, car_id);
CREATE UNIQUE INDEX entry_team_id_event_id_start_position_key ON entry (team_id, event_id, start_position);
ALTER TABLE entry ENABLE ROW LEVEL SECURITY;
ALTER TABLE entry FORCE ROW LEVEL SECURITY;
CREATE POLICY entry_own ON entry TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT, UPDATE ON entry TO halfshaft_app;

-- Membership and invitations -------------------------------------------------------------------------------------------

-- `user_id` is the id of a sign-in account; accounts live in another schema under another login.
CREATE TABLE membership (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  user_id text NOT NULL,
  person_id uuid NOT NULL,
  role text NOT NULL,
  event_id uuid,
  created_at timestamptz(3) NOT NULL,
  revoked_at timestamptz(3),
  CONSTRAINT membership_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT membership_team_id_fkey FOREIGN KEY (team_id) REFERENCES team (team_id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT membership_team_id_person_id_fkey FOREIGN KEY (team_id, person_id) REFERENCES person (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT membership_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT membership_role_known CHECK (role IN ('admin', 'manager', 'mechanic', 'driver'))
);
CREATE UNIQUE INDEX membership_team_id_user_id_key ON membership (team_id, user_id);
-- Reading "which teams am I in" starts from the account, before any team is known.
CREATE INDEX membership_user_id_idx ON membership (user_id);
ALTER TABLE membership ENABLE ROW LEVEL SECURITY;
ALTER TABLE membership FORCE ROW LEVEL SECURITY;
CREATE POLICY membership_own ON membership TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
CREATE POLICY membership_mine ON membership FOR SELECT TO halfshaft_app USING (user_id = current_app_user());
GRANT SELECT, INSERT, UPDATE ON membership TO halfshaft_app;
-- The name of a team one belongs to, before any team is chosen.
CREATE POLICY team_mine ON team FOR SELECT TO halfshaft_app
  USING (EXISTS (SELECT FROM membership m WHERE m.team_id = team.team_id AND m.user_id = current_app_user()));

-- Only a hash of the link's secret is kept; whoever holds the secret may read this one row before joining.
CREATE TABLE invite (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  token_hash text NOT NULL,
  role text NOT NULL,
  event_id uuid,
  made_by uuid NOT NULL,
  made_at timestamptz(3) NOT NULL,
  expires_at timestamptz(3) NOT NULL,
  revoked_at timestamptz(3),
  CONSTRAINT invite_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT invite_team_id_fkey FOREIGN KEY (team_id) REFERENCES team (team_id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT invite_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT invite_team_id_made_by_fkey FOREIGN KEY (team_id, made_by) REFERENCES person (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT invite_role_known CHECK (role IN ('manager', 'mechanic', 'driver'))
);
CREATE INDEX invite_token_hash_idx ON invite (token_hash);
ALTER TABLE invite ENABLE ROW LEVEL SECURITY;
ALTER TABLE invite FORCE ROW LEVEL SECURITY;
CREATE POLICY invite_own ON invite TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
CREATE POLICY invite_held ON invite FOR SELECT TO halfshaft_app USING (token_hash = current_invite());
GRANT SELECT, INSERT, UPDATE ON invite TO halfshaft_app;

-- The work log -----------------------------------------------------------------------------------------------------------

-- The next seq is taken by UPDATE … RETURNING inside the transaction that appends, so it has no gaps and later rows are
-- never visible before earlier ones, which a sequence would allow.
CREATE TABLE log_head (
  team_id uuid NOT NULL,
  event_id uuid NOT NULL,
  last_seq integer NOT NULL,
  CONSTRAINT log_head_pkey PRIMARY KEY (team_id, event_id),
  CONSTRAINT log_head_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
ALTER TABLE log_head ENABLE ROW LEVEL SECURITY;
ALTER TABLE log_head FORCE ROW LEVEL SECURITY;
CREATE POLICY log_head_own ON log_head TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT, UPDATE ON log_head TO halfshaft_app;

-- What was pushed and what was answered. Append-only: a repeated id gets the stored answer.
CREATE TABLE action (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  device_id text NOT NULL,
  device_seq integer NOT NULL,
  content text NOT NULL,
  outcome jsonb NOT NULL,
  received_at timestamptz(3) NOT NULL,
  CONSTRAINT action_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT action_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX action_team_id_event_id_device_id_device_seq_idx ON action (team_id, event_id, device_id, device_seq);
ALTER TABLE action ENABLE ROW LEVEL SECURITY;
ALTER TABLE action FORCE ROW LEVEL SECURITY;
CREATE POLICY action_own ON action TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT ON action TO halfshaft_app;

-- The truth. Append-only: the app's login may neither update nor delete here. Holds ids of people, never names.
CREATE TABLE log_entry (
  team_id uuid NOT NULL,
  event_id uuid NOT NULL,
  seq integer NOT NULL,
  action_id uuid NOT NULL,
  kind text NOT NULL,
  by_person uuid NOT NULL,
  entered_by uuid NOT NULL,
  device_id text NOT NULL,
  device_time bigint NOT NULL,
  server_time bigint NOT NULL,
  flags jsonb NOT NULL,
  body jsonb NOT NULL,
  CONSTRAINT log_entry_pkey PRIMARY KEY (team_id, event_id, seq),
  CONSTRAINT log_entry_team_id_action_id_fkey FOREIGN KEY (team_id, action_id) REFERENCES action (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT log_entry_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT log_entry_team_id_by_person_fkey FOREIGN KEY (team_id, by_person) REFERENCES person (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT log_entry_team_id_entered_by_fkey FOREIGN KEY (team_id, entered_by) REFERENCES person (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX log_entry_team_id_action_id_idx ON log_entry (team_id, action_id);
ALTER TABLE log_entry ENABLE ROW LEVEL SECURITY;
ALTER TABLE log_entry FORCE ROW LEVEL SECURITY;
CREATE POLICY log_entry_own ON log_entry TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT ON log_entry TO halfshaft_app;

-- Projections of the log, written in the transaction that appends, by the reducer that rebuilds them ----------------------

CREATE TABLE snag (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  entry_id uuid NOT NULL,
  body jsonb NOT NULL,
  CONSTRAINT snag_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT snag_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT snag_team_id_entry_id_fkey FOREIGN KEY (team_id, entry_id) REFERENCES entry (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX snag_team_id_event_id_idx ON snag (team_id, event_id);
ALTER TABLE snag ENABLE ROW LEVEL SECURITY;
ALTER TABLE snag FORCE ROW LEVEL SECURITY;
CREATE POLICY snag_own ON snag TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT, UPDATE ON snag TO halfshaft_app;

CREATE TABLE task (
  team_id uuid NOT NULL,
  id text NOT NULL,
  event_id uuid NOT NULL,
  entry_id uuid NOT NULL,
  service_id text NOT NULL,
  card_id uuid,
  snag_id uuid,
  state text NOT NULL,
  holder uuid,
  changed_seq integer NOT NULL,
  body jsonb NOT NULL,
  CONSTRAINT task_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT task_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT task_team_id_entry_id_fkey FOREIGN KEY (team_id, entry_id) REFERENCES entry (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT task_team_id_card_id_fkey FOREIGN KEY (team_id, card_id) REFERENCES card (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT task_team_id_snag_id_fkey FOREIGN KEY (team_id, snag_id) REFERENCES snag (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT task_team_id_holder_fkey FOREIGN KEY (team_id, holder) REFERENCES person (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT task_one_source CHECK ((card_id IS NULL) <> (snag_id IS NULL)),
  CONSTRAINT task_state_known CHECK (state IN ('open', 'claimed', 'underWay', 'done', 'carriedOver', 'notNeeded'))
);
CREATE INDEX task_team_id_event_id_idx ON task (team_id, event_id);
ALTER TABLE task ENABLE ROW LEVEL SECURITY;
ALTER TABLE task FORCE ROW LEVEL SECURITY;
CREATE POLICY task_own ON task TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT, UPDATE ON task TO halfshaft_app;

CREATE TABLE stage_run (
  team_id uuid NOT NULL,
  id text NOT NULL,
  event_id uuid NOT NULL,
  entry_id uuid NOT NULL,
  body jsonb NOT NULL,
  CONSTRAINT stage_run_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT stage_run_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT stage_run_team_id_entry_id_fkey FOREIGN KEY (team_id, entry_id) REFERENCES entry (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX stage_run_team_id_event_id_idx ON stage_run (team_id, event_id);
ALTER TABLE stage_run ENABLE ROW LEVEL SECURITY;
ALTER TABLE stage_run FORCE ROW LEVEL SECURITY;
CREATE POLICY stage_run_own ON stage_run TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
-- An undone first confirmation leaves nothing said about the stage, so the projection may lose a row.
GRANT SELECT, INSERT, UPDATE, DELETE ON stage_run TO halfshaft_app;

-- What an accepted action changed and what stood there before: needed to undo it.
CREATE TABLE applied_action (
  team_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  body jsonb NOT NULL,
  CONSTRAINT applied_action_pkey PRIMARY KEY (team_id, id),
  CONSTRAINT applied_action_team_id_id_fkey FOREIGN KEY (team_id, id) REFERENCES action (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT applied_action_team_id_event_id_fkey FOREIGN KEY (team_id, event_id) REFERENCES event (team_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX applied_action_team_id_event_id_idx ON applied_action (team_id, event_id);
ALTER TABLE applied_action ENABLE ROW LEVEL SECURITY;
ALTER TABLE applied_action FORCE ROW LEVEL SECURITY;
CREATE POLICY applied_action_own ON applied_action TO halfshaft_app USING (team_id = current_team()) WITH CHECK (team_id = current_team());
GRANT SELECT, INSERT, UPDATE ON applied_action TO halfshaft_app;

-- Organisers: the second kind of tenant ----------------------------------------------------------------------------------

CREATE TABLE organiser (
  organiser_id uuid NOT NULL,
  name text NOT NULL,
  created_at timestamptz(3) NOT NULL,
  CONSTRAINT organiser_pkey PRIMARY KEY (organiser_id)
);
ALTER TABLE organiser ENABLE ROW LEVEL SECURITY;
ALTER TABLE organiser FORCE ROW LEVEL SECURITY;
CREATE POLICY organiser_own ON organiser TO halfshaft_app USING (organiser_id = current_organiser()) WITH CHECK (organiser_id = current_organiser());
GRANT SELECT, INSERT, UPDATE ON organiser TO halfshaft_app;

CREATE TABLE organiser_membership (
  organiser_id uuid NOT NULL,
  id uuid NOT NULL,
  user_id text NOT NULL,
  created_at timestamptz(3) NOT NULL,
  revoked_at timestamptz(3),
  CONSTRAINT organiser_membership_pkey PRIMARY KEY (organiser_id, id),
  CONSTRAINT organiser_membership_organiser_id_fkey FOREIGN KEY (organiser_id) REFERENCES organiser (organiser_id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE UNIQUE INDEX organiser_membership_organiser_id_user_id_key ON organiser_membership (organiser_id, user_id);
CREATE INDEX organiser_membership_user_id_idx ON organiser_membership (user_id);
ALTER TABLE organiser_membership ENABLE ROW LEVEL SECURITY;
ALTER TABLE organiser_membership FORCE ROW LEVEL SECURITY;
CREATE POLICY organiser_membership_own ON organiser_membership TO halfshaft_app USING (organiser_id = current_organiser()) WITH CHECK (organiser_id = current_organiser());
CREATE POLICY organiser_membership_mine ON organiser_membership FOR SELECT TO halfshaft_app USING (user_id = current_app_user());
GRANT SELECT, INSERT, UPDATE ON organiser_membership TO halfshaft_app;
CREATE POLICY organiser_mine ON organiser FOR SELECT TO halfshaft_app
  USING (EXISTS (SELECT FROM organiser_membership m WHERE m.organiser_id = organiser.organiser_id AND m.user_id = current_app_user()));

CREATE TABLE published_event (
  organiser_id uuid NOT NULL,
  id uuid NOT NULL,
  name text NOT NULL,
  time_zone text NOT NULL,
  starts_on date NOT NULL,
  created_at timestamptz(3) NOT NULL,
  published_at timestamptz(3),
  CONSTRAINT published_event_pkey PRIMARY KEY (organiser_id, id),
  CONSTRAINT published_event_organiser_id_fkey FOREIGN KEY (organiser_id) REFERENCES organiser (organiser_id) ON DELETE RESTRICT ON UPDATE CASCADE
);
ALTER TABLE published_event ENABLE ROW LEVEL SECURITY;
ALTER TABLE published_event FORCE ROW LEVEL SECURITY;
CREATE POLICY published_event_own ON published_event TO halfshaft_app USING (organiser_id = current_organiser()) WITH CHECK (organiser_id = current_organiser());
CREATE POLICY published_event_public ON published_event FOR SELECT TO halfshaft_app
  USING (published_at IS NOT NULL AND current_app_user() IS NOT NULL);
GRANT SELECT, INSERT, UPDATE ON published_event TO halfshaft_app;
-- The name of an organiser that has published something.
CREATE POLICY organiser_public ON organiser FOR SELECT TO halfshaft_app
  USING (current_app_user() IS NOT NULL AND EXISTS (
    SELECT FROM published_event e WHERE e.organiser_id = organiser.organiser_id AND e.published_at IS NOT NULL));

CREATE TABLE published_itinerary (
  organiser_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  number integer NOT NULL,
  source jsonb NOT NULL,
  itinerary jsonb NOT NULL,
  saved_at timestamptz(3) NOT NULL,
  CONSTRAINT published_itinerary_pkey PRIMARY KEY (organiser_id, id),
  CONSTRAINT published_itinerary_organiser_id_event_id_fkey FOREIGN KEY (organiser_id, event_id) REFERENCES published_event (organiser_id, id) ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE UNIQUE INDEX published_itinerary_organiser_id_event_id_number_key ON published_itinerary (organiser_id, event_id, number);
ALTER TABLE published_itinerary ENABLE ROW LEVEL SECURITY;
ALTER TABLE published_itinerary FORCE ROW LEVEL SECURITY;
CREATE POLICY published_itinerary_own ON published_itinerary TO halfshaft_app USING (organiser_id = current_organiser()) WITH CHECK (organiser_id = current_organiser());
CREATE POLICY published_itinerary_public ON published_itinerary FOR SELECT TO halfshaft_app
  USING (current_app_user() IS NOT NULL AND EXISTS (
    SELECT FROM published_event e
    WHERE e.organiser_id = published_itinerary.organiser_id AND e.id = published_itinerary.event_id AND e.published_at IS NOT NULL));
GRANT SELECT, INSERT ON published_itinerary TO halfshaft_app;
