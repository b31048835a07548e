// Open
export { openStore, type Store, type StoreSettings } from './client/store';
// Fence: the only ways in
export { asNewOrganiser, asOrganiser, type OrganiserClaim, type OrganiserTx } from './fence/as-organiser';
export { asUser, type UserTx } from './fence/as-user';
export { lendOrganiser } from './fence/lend-organiser';
export {
  type HeldInvite,
  type Member,
  type MemberTx,
  NotAMember,
  type TeamClaim,
  type TeamTx,
  withCarriedTeam,
  withInvite,
  withMembers,
  withNewTeam,
  withTeam,
} from './fence/with-team';
// The log
export { appendEntries, type EntryToAppend } from './log/append';
export type { LogNotice } from './log/channel';
export { type LogListener, listenToLog } from './log/listen';
export { lockLog } from './log/lock-log';
