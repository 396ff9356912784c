export type { Admittance, Applicant } from "./admission.ts";
export { Admission } from "./admission.ts";
export { readCode, shownCode } from "./codes.ts";
export type { MadeInvitation } from "./invitations.ts";
export { invitationName } from "./kept-keys.ts";
export type { Caller, Member } from "./member.ts";
export { deviceSchema, nameSchema, walkSchema } from "./member.ts";
export type { MemberListener } from "./member-book.ts";
