import type { Auth } from './auth';

/**
 * Sets the password of the account with this e-mail and signs it out everywhere: the way back in for whoever has no admin
 * to ask. False, and nothing changes, when there is no such account, or one without a password. A link that was made for
 * it ends.
 */
export async function setNewPassword(auth: Auth, email: string, password: string): Promise<boolean> {
  const { adapter, internalAdapter, password: hashing } = await auth.$context;
  const found = await internalAdapter.findUserByEmail(email.trim().toLowerCase());
  if (!found || !(await internalAdapter.findCredentialAccount(found.user.id))) return false;
  const { id } = found.user;
  await internalAdapter.updatePassword(id, await hashing.hash(password));
  await adapter.deleteMany({ model: 'verification', where: [{ field: 'value', value: id }] });
  await internalAdapter.deleteUserSessions(id);
  return true;
}
