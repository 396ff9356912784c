import type { JoinProof } from "../../core/link/index.ts";
import { joinText } from "../../core/link/index.ts";
import type { Role } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";
import type { Engine } from "../engine/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import { Challenges } from "./challenges.ts";
import { readCode } from "./codes.ts";
import { isSignedBy } from "./device-key.ts";
import { DeviceNames } from "./device-names.ts";
import { Invitations, type MadeInvitation, type OpenInvitation } from "./invitations.ts";
import { invitationName } from "./kept-keys.ts";
import type { Caller, Member } from "./member.ts";
import { MemberBook, type MemberListener } from "./member-book.ts";
import { NameClaims, type NameRefusal } from "./name-claims.ts";
import { OwnerCode } from "./owner-code.ts";
import { Tokens } from "./tokens.ts";

/** How long a token is good: longer than any walk with its rehearsals, short enough to be forgotten. */
const TOKEN_LIFE = 30 * 24 * 3_600_000;

/** What opens a walk to whom. */
export interface Opening {
  /** As it was entered. */
  readonly code: string;
  readonly device: string;
  /** For the owner's code only; an invitation has its own. */
  readonly walk: WalkId | null;
}

/** Somebody who asks to be let in. */
export interface Applicant extends Opening {
  /** `null`: the last part of the device's name. */
  readonly name: string | null;
  readonly role: Role;
  /** `null` for a device without a key. */
  readonly proof: JoinProof | null;
  /** Who asks, when it has a good token already. */
  readonly caller: Caller | null;
}

/** Let in, or why not. */
export type Admittance =
  | {
      readonly kind: "joined";
      readonly member: Member;
      readonly token: string;
      /** The key that the name is tied to; `null` for none. */
      readonly key: string | null;
    }
  | { readonly kind: "bad-code" | "walk-needed" | "bad-proof" | "code-used" }
  | { readonly kind: NameRefusal; readonly walk: WalkId };

/** A challenge to prove a key by, or why there is none. */
export type Challenging =
  | { readonly kind: "challenge"; readonly walk: WalkId; readonly challenge: string }
  | { readonly kind: "bad-code" | "walk-needed" };

/** What a code opens, by which invitation (`null` for the owner's code), or why nothing. */
type Opened =
  | { readonly kind: "open"; readonly walk: WalkId; readonly invitation: OpenInvitation | null }
  | { readonly kind: "bad-code" | "walk-needed" };

/** What admission is made of. */
interface AdmissionParts {
  readonly engine: Engine;
  readonly surroundings: Surroundings;
  readonly owner: OwnerCode;
  readonly tokens: Tokens;
  readonly invitations: Invitations;
  readonly members: MemberBook;
  readonly names: DeviceNames;
  readonly challenges: Challenges;
}

/** Who may come in and who is in: codes, tokens and members, shared by all hubs on one engine. */
export class Admission {
  readonly #engine: Engine;
  readonly #surroundings: Surroundings;
  readonly #owner: OwnerCode;
  readonly #tokens: Tokens;
  readonly #invitations: Invitations;
  readonly #members: MemberBook;
  readonly #names: DeviceNames;
  readonly #claims: NameClaims;
  readonly #challenges: Challenges;

  private constructor(parts: AdmissionParts) {
    const { engine, surroundings, names, members } = parts;
    this.#engine = engine;
    this.#surroundings = surroundings;
    this.#owner = parts.owner;
    this.#tokens = parts.tokens;
    this.#invitations = parts.invitations;
    this.#members = members;
    this.#names = names;
    this.#claims = new NameClaims({ engine, names, members, now: surroundings.now });
    this.#challenges = parts.challenges;
  }

  static async open(engine: Engine, surroundings: Surroundings, newOwnerCode: boolean): Promise<Admission> {
    const { keep } = engine;
    const admission = new Admission({
      engine,
      surroundings,
      owner: await OwnerCode.open(keep, surroundings, newOwnerCode),
      tokens: await Tokens.open(keep, surroundings),
      invitations: new Invitations(keep, surroundings),
      members: await MemberBook.open(keep),
      names: await DeviceNames.open(keep),
      challenges: await Challenges.open(keep, surroundings),
    });
    if (newOwnerCode) await admission.#endAll();
    return admission;
  }

  /** The owner's code as it is kept; `shownCode` makes it readable. */
  get ownerCode(): string {
    return this.#owner.code;
  }

  /** Whether a code as it was entered is the owner's. */
  isOwners(entered: string): boolean {
    const code = readCode(entered);
    return code !== null && this.#owner.is(code);
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

  /** What a device is to sign to prove its key, for who has a good code. */
  async challenge(opening: Opening): Promise<Challenging> {
    const opened = await this.#open(opening);
    if (opened.kind !== "open") return opened;
    const { walk } = opened;
    return {
      kind: "challenge",
      walk,
      challenge: this.#challenges.make({ walk, device: opening.device }),
    };
  }

  async join({ name, role, proof, caller, ...opening }: Applicant): Promise<Admittance> {
    const { device } = opening;
    const opened = await this.#open(opening);
    if (opened.kind !== "open") return opened;
    const { walk, invitation } = opened;
    if (proof && !(await this.#isProved(proof, walk, device))) return { kind: "bad-proof" };
    const key = proof?.key ?? null;
    const claimant = { walk, device, key, caller, invitation: invitation?.key ?? null };
    const refusal = await this.#claims.refusal(claimant);
    if (refusal !== null) return { kind: refusal, walk };
    if (invitation && !(await this.#invitations.admits(invitation, device))) return { kind: "code-used" };
    if (!(await this.#names.put({ walk, device, key, epoch: this.#engine.epoch }))) {
      return { kind: "other-key", walk };
    }
    const joined = this.#surroundings.now();
    const member: Member = {
      walk,
      device,
      name: name ?? (device.split("/").at(-1) || device).slice(0, 80),
      role: invitation?.role ?? role,
      token: Buffer.from(this.#surroundings.randomBytes(16)).toString("base64url"),
      joined,
      expires: (joined + TOKEN_LIFE) as Instant,
      invitation: invitation?.key ?? null,
    };
    await this.#members.put(member);
    return { kind: "joined", member, token: await this.#tokens.sign(member), key };
  }

  /** What a code opens: by an invitation, or with the owner's code by none. */
  async #open({ code, walk }: Opening): Promise<Opened> {
    const read = readCode(code);
    if (read === null) return { kind: "bad-code" };
    if (this.#owner.is(read)) {
      return walk === null ? { kind: "walk-needed" } : { kind: "open", walk, invitation: null };
    }
    const invitation = await this.#invitations.open(read);
    return invitation ? { kind: "open", walk: invitation.walk, invitation } : { kind: "bad-code" };
  }

  async #isProved({ key, challenge, host, signature }: JoinProof, walk: WalkId, device: string) {
    const text = joinText({ challenge, walk, device, host });
    return isSignedBy(key, text, signature) && (await this.#challenges.use(challenge, { walk, device }));
  }

  /** The key that a device is tied to in a walk; `null` for none. */
  keyOf(walk: WalkId, device: string): string | null {
    return this.#names.get(walk, device)?.key ?? null;
  }

  /** Notes that a device has written here itself, so that nobody else brings entries of it from then on. */
  async heard({ walk, device }: Member): Promise<void> {
    const { epoch } = this.#engine;
    const name = this.#names.get(walk, device);
    if (name?.epoch !== epoch) await this.#names.put({ walk, device, key: name?.key ?? null, epoch });
  }

  /**
   * Whether a device was admitted by this hub, so that no other hub may bring entries of it. False for one that was not
   * heard since the log was brought back from a copy: another hub may have what is lost here.
   */
  isOwn(walk: WalkId, device: string): boolean {
    return this.#names.get(walk, device)?.epoch === this.#engine.epoch;
  }

  /** Makes a code for so many minutes, by which so many devices may join. */
  invite(walk: WalkId, role: Role, minutes: number, devices = 1): Promise<MadeInvitation> {
    return this.#invitations.make({ walk, role, minutes, devices });
  }

  /** The invitations of a walk that are still good, the first to expire before the others. */
  async invitations(walk: WalkId): Promise<readonly OpenInvitation[]> {
    return (await this.#invitations.all()).filter((one) => one.walk === walk);
  }

  /** How many more devices may join by an invitation. */
  seatsLeft(invitation: OpenInvitation): Promise<number> {
    return this.#invitations.left(invitation);
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
    this.#names.close();
  }
}
