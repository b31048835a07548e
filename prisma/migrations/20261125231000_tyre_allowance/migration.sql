-- How many tyres each car may use at the event, as its regulations say; null: they set no number, or nobody looked yet.
ALTER TABLE event ADD COLUMN tyre_allowance integer;
ALTER TABLE event ADD CONSTRAINT event_tyre_allowance_check CHECK (tyre_allowance BETWEEN 1 AND 200);
