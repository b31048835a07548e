/** Signs the cookies, so that a second process on the same data knows them too. */
export const SECRET = 'a secret for tests only, of forty letters';
