-- Start positions set anew at a regroup, by the section from which they hold; {}: the first one holds to the end.
ALTER TABLE entry ADD COLUMN positions_by_section jsonb NOT NULL DEFAULT '{}';
