import * as z from '@/lib/zod';

const LEAST_PASSWORD = 10;
const MOST_PASSWORD = 200;
export const PASSWORD_HINT = `At least ${LEAST_PASSWORD} characters. A few words in a row are easy to keep in mind.`;

const email = z.string().trim().pipe(z.email('That is not a complete e-mail address. Check it.'));

export const signInForm = z.object({
  email,
  password: z.string().min(1, 'The password is empty. Type it in.'),
});
export type SignInValues = z.infer<typeof signInForm>;

const newPassword = z
  .string()
  .min(LEAST_PASSWORD, `The password is too short. Use at least ${LEAST_PASSWORD} characters.`)
  .max(MOST_PASSWORD, `The password is too long. Use at most ${MOST_PASSWORD} characters.`);

export const newPasswordForm = z.object({ password: newPassword });

export const signUpForm = z.object({
  name: z
    .string()
    .trim()
    .min(1, 'The name is empty. Type it in.')
    .max(60, 'The name is longer than 60 characters. Shorten it.'),
  email,
  password: newPassword,
});
export type SignUpValues = z.infer<typeof signUpForm>;
