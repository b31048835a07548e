export { applyMigrations } from './apply';
export { findDrift } from './drift';
export { ensureLogins, type Logins } from './logins';
