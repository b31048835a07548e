-- What the managers expect stages to be like, by stage: per mille of each condition; {}: nothing is expected.
ALTER TABLE event ADD COLUMN planned_conditions jsonb NOT NULL DEFAULT '{}';
