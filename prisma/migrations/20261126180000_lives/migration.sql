-- What keeps failing is looked for over all events of a team. What was out of order is a small share of all that was
-- done, and of the facts of a car only some say anything of a part's life: both are found without reading the rest. The
-- conditions stand in the index and not in its keys, since under row-level security a key may only be one that leaks nothing.
CREATE INDEX task_team_id_card_id_idx ON task (team_id, card_id);
CREATE INDEX task_out_of_order_idx ON task (team_id, card_id)
  WHERE body->'findings' @> '[{"grade": "needsWork"}]' OR body->'findings' @> '[{"grade": "temporaryRepair"}]';
CREATE INDEX car_fact_of_lives_idx ON car_fact (team_id, entry_id)
  WHERE body->'fact'->>'kind' IN ('incident', 'fitted', 'modified', 'madeGood', 'prepared', 'out', 'restarted');
