-- A version of a published itinerary that its organiser issued: 0 is the publication itself, from 1 on they are
-- bulletins. Written once: nobody may change or remove what teams have been told. A version without such a row is a draft.
CREATE TABLE bulletin (
  organiser_id uuid NOT NULL,
  id uuid NOT NULL,
  event_id uuid NOT NULL,
  number integer NOT NULL,
  itinerary_number integer NOT NULL,
  note text NOT NULL,
  issued_at timestamptz(3) NOT NULL,
  CONSTRAINT bulletin_pkey PRIMARY KEY (organiser_id, id),
  CONSTRAINT bulletin_organiser_id_event_id_itinerary_number_fkey FOREIGN KEY (organiser_id, event_id, itinerary_number) REFERENCES published_itinerary (organiser_id, event_id, number) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT bulletin_number_not_negative CHECK (number >= 0)
);
CREATE UNIQUE INDEX bulletin_organiser_id_event_id_number_key ON bulletin (organiser_id, event_id, number);
CREATE UNIQUE INDEX bulletin_organiser_id_event_id_itinerary_number_key ON bulletin (organiser_id, event_id, itinerary_number);

-- Which bulletin of the organiser a team's version is a copy of; null for one the team wrote itself.
ALTER TABLE itinerary_version ADD COLUMN bulletin_number integer;
CREATE UNIQUE INDEX itinerary_version_team_id_event_id_bulletin_number_key ON itinerary_version (team_id, event_id, bulletin_number);

-- What was published before there were bulletins: the version that stood at the publication, and each one saved since,
-- which every team could see at once. The owner is fenced out like everybody else, so the fences open for these two.
ALTER TABLE published_event NO FORCE ROW LEVEL SECURITY;
ALTER TABLE published_itinerary NO FORCE ROW LEVEL SECURITY;
ALTER TABLE event NO FORCE ROW LEVEL SECURITY;
ALTER TABLE itinerary_version NO FORCE ROW LEVEL SECURITY;
INSERT INTO bulletin (organiser_id, id, event_id, number, itinerary_number, note, issued_at)
SELECT v.organiser_id, gen_random_uuid(), v.event_id,
  row_number() OVER (PARTITION BY v.organiser_id, v.event_id ORDER BY v.number) - 1,
  v.number, '', greatest(v.saved_at, e.published_at)
FROM published_itinerary v
JOIN published_event e ON e.organiser_id = v.organiser_id AND e.id = v.event_id
WHERE e.published_at IS NOT NULL AND NOT EXISTS (
  SELECT FROM published_itinerary later
  WHERE later.organiser_id = v.organiser_id AND later.event_id = v.event_id
    AND later.number > v.number AND later.saved_at <= e.published_at);
UPDATE itinerary_version t SET bulletin_number = (
  SELECT max(b.number) FROM bulletin b
  WHERE b.organiser_id = e.organiser_id AND b.event_id = e.published_event_id AND b.issued_at <= t.saved_at)
FROM event e
WHERE e.team_id = t.team_id AND e.id = t.event_id AND e.published_event_id IS NOT NULL AND t.number = 1;
ALTER TABLE published_event FORCE ROW LEVEL SECURITY;
ALTER TABLE published_itinerary FORCE ROW LEVEL SECURITY;
ALTER TABLE event FORCE ROW LEVEL SECURITY;
ALTER TABLE itinerary_version FORCE ROW LEVEL SECURITY;

ALTER TABLE bulletin ENABLE ROW LEVEL SECURITY;
ALTER TABLE bulletin FORCE ROW LEVEL SECURITY;
CREATE POLICY bulletin_own ON bulletin TO halfshaft_app USING (organiser_id = current_organiser()) WITH CHECK (organiser_id = current_organiser());
CREATE POLICY bulletin_public ON bulletin FOR SELECT TO halfshaft_app
  USING (current_app_user() IS NOT NULL AND EXISTS (
    SELECT FROM published_event e
    WHERE e.organiser_id = bulletin.organiser_id AND e.id = bulletin.event_id AND e.published_at IS NOT NULL));
GRANT SELECT, INSERT ON bulletin TO halfshaft_app;

-- Teams see what was issued and no draft.
DROP POLICY published_itinerary_public ON published_itinerary;
CREATE POLICY published_itinerary_public ON published_itinerary FOR SELECT TO halfshaft_app
  USING (current_app_user() IS NOT NULL AND EXISTS (
    SELECT FROM bulletin b
    WHERE b.organiser_id = published_itinerary.organiser_id AND b.event_id = published_itinerary.event_id
      AND b.itinerary_number = published_itinerary.number));
