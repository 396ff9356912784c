import type { Role } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { Keep } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import { readCode } from "./codes.ts";
import { Invitations, type MadeInvitation, type OpenInvitation } from "./invitations.ts";
import { invitationName } from "./kept-keys.ts";
import { type Caller, type Member, RANK } from "./member.ts";
import { MemberBook, type MemberListener } from "./member-book.ts";
import { OwnerCode } from "./owner-code.ts";
import { Tokens } from "./tokens.ts";

/** How long a token is good: longer than any walk with its rehearsals, short enough to be forgotten. */
const TOKEN_LIFE = 30 * 24 * 3_600_000;

/** Somebody who asks to be let in. */
export interface Applicant {
  /** As it was entered. */
  readonly code: string;
  readonly device: string;
  /** `null`: the last part of the device's name. */
  readonly name: string | null;
  /** For the owner's code only; an invitation has its own. */
  readonly walk: WalkId | null;
  readonly role: Role;
  /** Who asks, when it has a good token already. */
  readonly caller: Caller | null;
}

/** Let in, or why not. */
export type Admittance =
  | { readonly kind: "joined"; readonly member: Member; readonly token: string }
  | { readonly kind: "bad-code" | "walk-needed" | "device-taken" };

/** What admission is made of. */
interface AdmissionParts {
  readonly surroundings: Surroundings;
  readonly owner: OwnerCode;
  readonly tokens: Tokens;
  readonly invitations: Invitations;
  readonly members: MemberBook;
}

/** Who may come in and who is in: codes, tokens and members, shared by all hubs on one engine. */
export class Admission {
  readonly #surroundings: Surroundings;
  readonly #owner: OwnerCode;
  readonly #tokens: Tokens;
  readonly #invitations: Invitations;
  readonly #members: MemberBook;

  private constructor({ surroundings, owner, tokens, invitations, members }: AdmissionParts) {
    this.#surroundings = surroundings;
    this.#owner = owner;
    this.#tokens = tokens;
    this.#invitations = invitations;
    this.#members = members;
  }

  static async open(keep: Keep, surroundings: Surroundings, newOwnerCode: boolean): Promise<Admission> {
    const admission = new Admission({
      surroundings,
      owner: await OwnerCode.open(keep, surroundings, newOwnerCode),
      tokens: await Tokens.open(keep, surroundings),
      invitations: new Invitations(keep, surroundings),
      members: await MemberBook.open(keep),
    });
    if (newOwnerCode) await admission.#endAll();
    return admission;
  }

  /** The owner's code as it is kept; `shownCode` makes it readable. */
  get ownerCode(): string {
    return this.#owner.code;
  }

  /** Who a credential belongs to: a token, or as a bearer the owner's code; `null` when it is no good (any more). */
  async identify(credential: string, by: "bearer" | "cookie"): Promise<Caller | null> {
    const code = by === "bearer" ? readCode(credential) : null;
    if (code !== null) return this.#owner.is(code) ? { kind: "owner" } : null;
    const claims = await this.#tokens.read(credential);
    if (!claims) return null;
    const isHis = (member: Member | null): member is Member =>
      member?.token === claims.jti && member.role === claims.role;
    const known = this.#members.get(claims.walk, claims.sub);
    const member = isHis(known) ? known : await this.#members.ask(claims.walk, claims.sub);
    return isHis(member) ? { kind: "member", member, by } : null;
  }

  /** Whether somebody's token is still good at this moment. */
  isGood({ walk, device, token, expires }: Member): boolean {
    return expires > this.#surroundings.now() && this.#members.get(walk, device)?.token === token;
  }

  async join({ code, device, name, walk, role, caller }: Applicant): Promise<Admittance> {
    const read = readCode(code);
    if (read === null) return { kind: "bad-code" };
    const isOwner = this.#owner.is(read);
    const invitation = isOwner ? null : await this.#invitations.open(read);
    if (!(isOwner || invitation)) return { kind: "bad-code" };
    const joinedWalk = invitation?.walk ?? walk;
    if (joinedWalk === null) return { kind: "walk-needed" };
    const joinedRole = invitation?.role ?? role;
    if (!isOwner && (await this.#isTaken(joinedWalk, device, joinedRole, caller))) {
      return { kind: "device-taken" };
    }
    const joined = this.#surroundings.now();
    const member: Member = {
      walk: joinedWalk,
      device,
      name: name ?? (device.split("/").at(-1) || device).slice(0, 80),
      role: joinedRole,
      token: Buffer.from(this.#surroundings.randomBytes(16)).toString("base64url"),
      joined,
      expires: (joined + TOKEN_LIFE) as Instant,
      invitation: invitation?.key ?? null,
    };
    await this.#members.put(member);
    return { kind: "joined", member, token: await this.#tokens.sign(member) };
  }

  /** An invitation gives what it says and no more: it does not put a device out that stands higher. */
  async #isTaken(walk: WalkId, device: string, role: Role, caller: Caller | null): Promise<boolean> {
    const there = await this.#members.ask(walk, device);
    if (!there || there.expires <= this.#surroundings.now()) return false;
    const isItself = caller?.kind === "member" && caller.member.token === there.token;
    return !isItself && RANK[there.role] > RANK[role];
  }

  invite(walk: WalkId, role: Role, minutes: number): Promise<MadeInvitation> {
    return this.#invitations.make(walk, role, minutes);
  }

  /** The invitations of a walk that are still good, the first to expire before the others. */
  async invitations(walk: WalkId): Promise<readonly OpenInvitation[]> {
    return (await this.#invitations.all()).filter((one) => one.walk === walk);
  }

  /** Ends an invitation of a walk by its {@link invitationName}; those who came by it stay. False when there is none. */
  async endInvitation(walk: WalkId, name: string): Promise<boolean> {
    const invitation = (await this.invitations(walk)).find(({ key }) => invitationName(key) === name);
    if (!invitation) return false;
    await this.#invitations.withdraw(invitation.key);
    return true;
  }

  /**
   * Puts everybody out of a walk but one device (`null`: everybody), and ends all its invitations. Returns how many
   * devices were put out.
   */
  async withdrawAll(walk: WalkId, but: string | null): Promise<number> {
    for (const { key } of await this.invitations(walk)) await this.#invitations.withdraw(key);
    const out = this.#members.of(walk).filter(({ device }) => device !== but);
    for (const member of out) await this.#members.remove(member);
    return out.length;
  }

  /** Whoever had the old owner's code may have let in others by it, and they others again. */
  async #endAll(): Promise<void> {
    for (const { key } of await this.#invitations.all()) await this.#invitations.withdraw(key);
    for (const member of this.#members.all()) await this.#members.remove(member);
  }

  /** Everybody who is in a walk, in the order of their devices' names. */
  members(walk: WalkId): readonly Member[] {
    const now = this.#surroundings.now();
    return this.#members.of(walk).filter(({ expires }) => expires > now);
  }

  /**
   * Puts a device out of a walk: its token is dead on every hub of the engine, and the invitation that it came by, so
   * that it does not come straight back. False when it was not in.
   */
  async withdraw(walk: WalkId, device: string): Promise<boolean> {
    const member = await this.#members.ask(walk, device);
    if (!member) return false;
    if (member.invitation !== null) await this.#invitations.withdraw(member.invitation);
    await this.#members.remove(member);
    return true;
  }

  /** Somebody leaves of its own will. */
  leave(member: Member): Promise<void> {
    return this.#members.remove(member);
  }

  /** Tells of changes from now on; returns a function that ends it. */
  listen(listener: MemberListener): () => void {
    return this.#members.listen(listener);
  }

  close(): void {
    this.#owner.close();
    this.#members.close();
  }
}
