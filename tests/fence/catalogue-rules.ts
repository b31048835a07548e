/** A rule of the catalogue. `offenders` gives one row, `what`, for each thing that breaks it. */
export interface CatalogueRule {
  rule: string;
  offenders: string;
  /** Breaks the rule, to show that the rule would notice. */
  breach: string;
}

const TABLES = `c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND c.relname <> '_prisma_migrations'`;
const FOREIGN_KEYS = `k.contype = 'f' AND k.connamespace = 'public'::regnamespace`;
const BOTH_SCHEMAS = `c.relnamespace IN ('public'::regnamespace, 'auth'::regnamespace)`;
const EVERY_RIGHT = `unnest(ARRAY['SELECT', 'INSERT', 'UPDATE', 'DELETE', 'TRUNCATE', 'REFERENCES', 'TRIGGER']) p`;

const tableRules: CatalogueRule[] = [
  {
    rule: 'every table begins with its tenant',
    offenders: `SELECT c.relname AS what FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum = 1
      WHERE ${TABLES} AND a.attname NOT IN ('team_id', 'organiser_id')`,
    breach: 'CREATE TABLE careless (id uuid, team_id uuid)',
  },
  {
    rule: 'row-level security is enabled and forced on every table',
    offenders: `SELECT c.relname AS what FROM pg_class c WHERE ${TABLES} AND NOT (c.relrowsecurity AND c.relforcerowsecurity)`,
    breach: 'ALTER TABLE car NO FORCE ROW LEVEL SECURITY',
  },
  {
    rule: 'no tenant may be null',
    offenders: `SELECT c.relname AS what FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid
      WHERE ${TABLES} AND a.attnum = 1 AND NOT a.attnotnull`,
    breach: 'CREATE TABLE careless (team_id uuid)',
  },
  {
    rule: 'every primary key leads with the tenant',
    offenders: `SELECT c.relname AS what FROM pg_class c LEFT JOIN pg_index i ON i.indrelid = c.oid AND i.indisprimary
      WHERE ${TABLES} AND i.indkey[0] IS DISTINCT FROM 1`,
    breach: 'CREATE TABLE careless (team_id uuid, id uuid PRIMARY KEY)',
  },
  {
    rule: 'every unique key leads with the tenant',
    offenders: `SELECT i.indexrelid::regclass::text AS what FROM pg_index i JOIN pg_class c ON c.oid = i.indrelid
      WHERE ${TABLES} AND i.indisunique AND i.indkey[0] <> 1`,
    breach: 'CREATE UNIQUE INDEX careless ON invite (token_hash)',
  },
  {
    rule: 'every foreign key leads with the same tenant on both sides',
    offenders: `SELECT k.conname AS what FROM pg_constraint k
      JOIN pg_attribute a ON a.attrelid = k.conrelid AND a.attnum = k.conkey[1]
      JOIN pg_attribute f ON f.attrelid = k.confrelid AND f.attnum = k.confkey[1]
      WHERE ${FOREIGN_KEYS} AND NOT (a.attname = f.attname AND a.attname IN ('team_id', 'organiser_id'))`,
    breach: `ALTER TABLE car ADD UNIQUE (id); ALTER TABLE card ADD CONSTRAINT careless FOREIGN KEY (car_id) REFERENCES car (id)`,
  },
  {
    rule: 'no foreign key sets a tenant null or deletes along',
    offenders: `SELECT k.conname AS what FROM pg_constraint k WHERE ${FOREIGN_KEYS} AND k.confdeltype NOT IN ('r', 'a')`,
    breach: `ALTER TABLE task ADD CONSTRAINT careless FOREIGN KEY (team_id, card_id) REFERENCES card (team_id, id) ON DELETE SET NULL`,
  },
  {
    rule: 'nothing stands beside the tables: no view, sequence, rule or trigger',
    offenders: `SELECT c.relname AS what FROM pg_class c
        WHERE c.relnamespace = 'public'::regnamespace AND c.relkind NOT IN ('r', 'p', 'i', 'I')
      UNION ALL SELECT t.tgname FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid WHERE ${TABLES} AND NOT t.tgisinternal
      UNION ALL SELECT r.rulename FROM pg_rules r WHERE r.schemaname = 'public'`,
    breach: 'CREATE VIEW careless AS SELECT * FROM car',
  },
  {
    rule: 'no function runs with the rights of its owner',
    offenders: `SELECT p.proname AS what FROM pg_proc p JOIN pg_namespace n ON n.oid = p.pronamespace
      WHERE p.prosecdef AND n.nspname NOT IN ('pg_catalog', 'information_schema')`,
    breach: `CREATE FUNCTION careless() RETURNS int LANGUAGE sql SECURITY DEFINER AS 'SELECT 1'`,
  },
];

const policyRules: CatalogueRule[] = [
  {
    rule: 'every table has a policy',
    offenders: `SELECT c.relname AS what FROM pg_class c
      WHERE ${TABLES} AND NOT EXISTS (SELECT FROM pg_policy p WHERE p.polrelid = c.oid)`,
    breach: 'DROP POLICY card_own ON card',
  },
  {
    rule: 'policies are for the app alone',
    offenders: `SELECT policyname AS what FROM pg_policies
      WHERE schemaname = 'public' AND NOT (roles = '{halfshaft_app}' AND permissive = 'PERMISSIVE')`,
    breach: 'ALTER POLICY card_own ON card TO PUBLIC',
  },
  {
    rule: 'a policy that lets write checks what is written',
    offenders: `SELECT policyname AS what FROM pg_policies
      WHERE schemaname = 'public' AND cmd <> 'SELECT' AND with_check IS NULL`,
    breach: 'CREATE POLICY careless ON card TO halfshaft_app USING (team_id = current_team())',
  },
];

const roleRules: CatalogueRule[] = [
  {
    rule: 'the logins are plain: no superuser, no bypass, no making of roles or databases',
    offenders: `SELECT rolname AS what FROM pg_roles WHERE rolname LIKE 'halfshaft_%'
      AND (rolsuper OR rolbypassrls OR rolcreaterole OR rolcreatedb OR rolreplication)`,
    breach: 'ALTER ROLE halfshaft_app BYPASSRLS',
  },
  {
    rule: 'the logins belong to no other role',
    offenders: `SELECT m.member::regrole || ' in ' || m.roleid::regrole AS what FROM pg_auth_members m
      WHERE m.member::regrole::text LIKE 'halfshaft_%' OR m.roleid::regrole::text LIKE 'halfshaft_%'`,
    breach: 'GRANT pg_read_all_data TO halfshaft_app',
  },
  {
    rule: 'the logins own nothing',
    offenders: `SELECT d.classid::regclass || ' ' || d.objid AS what FROM pg_shdepend d JOIN pg_roles r ON r.oid = d.refobjid
      WHERE d.refclassid = 'pg_authid'::regclass AND d.deptype = 'o' AND r.rolname LIKE 'halfshaft_%'`,
    breach: 'GRANT CREATE ON SCHEMA public TO halfshaft_app; ALTER TABLE car OWNER TO halfshaft_app',
  },
  {
    rule: 'the app may not change, remove or empty what was logged',
    offenders: `SELECT c.relname || ' ' || p AS what FROM pg_class c, unnest(ARRAY['UPDATE', 'DELETE', 'TRUNCATE']) p
      WHERE c.oid IN ('log_entry'::regclass, 'action'::regclass) AND has_table_privilege('halfshaft_app', c.oid, p)
      UNION ALL SELECT c.relname || ' by column' FROM pg_class c WHERE c.oid IN ('log_entry'::regclass, 'action'::regclass)
        AND has_any_column_privilege('halfshaft_app', c.oid, 'UPDATE')`,
    breach: 'GRANT UPDATE (body) ON log_entry TO halfshaft_app',
  },
  {
    rule: 'the app may only read and write rows',
    offenders: `SELECT c.relname || ' ' || p AS what FROM pg_class c, unnest(ARRAY['TRUNCATE', 'REFERENCES', 'TRIGGER']) p
      WHERE ${TABLES} AND has_table_privilege('halfshaft_app', c.oid, p)`,
    breach: 'GRANT TRUNCATE ON car TO halfshaft_app',
  },
  {
    rule: 'the app reaches neither sign-in nor the history of migrations',
    offenders: `SELECT c.relname || ' ' || p AS what FROM pg_class c, ${EVERY_RIGHT}
      WHERE (c.relnamespace = 'auth'::regnamespace OR c.relname = '_prisma_migrations') AND c.relkind IN ('r', 'p')
        AND has_table_privilege('halfshaft_app', c.oid, p)
      UNION ALL SELECT 'schema auth' WHERE has_schema_privilege('halfshaft_app', 'auth', 'USAGE')`,
    breach: 'GRANT SELECT ON auth.session TO halfshaft_app',
  },
  {
    rule: 'sign-in reaches no table of a team or organiser',
    offenders: `SELECT c.relname || ' ' || p AS what FROM pg_class c, ${EVERY_RIGHT}
      WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND has_table_privilege('halfshaft_auth', c.oid, p)`,
    breach: 'GRANT SELECT ON person TO halfshaft_auth',
  },
  {
    rule: 'neither login makes anything in either schema',
    offenders: `SELECT r || ' in ' || n.nspname AS what FROM pg_namespace n, unnest(ARRAY['halfshaft_app', 'halfshaft_auth']) r
      WHERE n.nspname IN ('public', 'auth') AND has_schema_privilege(r, n.oid, 'CREATE')`,
    breach: 'GRANT CREATE ON SCHEMA public TO PUBLIC',
  },
  {
    rule: 'no right is given by column',
    offenders: `SELECT c.relname || '.' || a.attname AS what FROM pg_attribute a JOIN pg_class c ON c.oid = a.attrelid
      WHERE ${BOTH_SCHEMAS} AND a.attacl IS NOT NULL`,
    breach: 'GRANT SELECT (id) ON car TO halfshaft_auth',
  },
  {
    rule: 'no right is given by default, to everybody, or to be passed on',
    offenders: `SELECT 'by default' AS what FROM pg_default_acl
      UNION ALL SELECT c.relname || ' to everybody or to pass on' FROM pg_class c, aclexplode(c.relacl) g
      WHERE ${BOTH_SCHEMAS} AND (g.grantee = 0 OR (g.is_grantable AND g.grantee <> c.relowner))`,
    breach: 'GRANT SELECT ON car TO PUBLIC',
  },
];

export const CATALOGUE_RULES: CatalogueRule[] = [...tableRules, ...policyRules, ...roleRules];
