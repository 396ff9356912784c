export type { HubCertificate } from "./certificates.ts";
export { CertificateTroubleError, givenCertificate, selfMadeCertificate } from "./certificates.ts";
export type { MachineNames } from "./machine-names.ts";
export { lanAddresses, machineNames, PRIVATE_ENDINGS } from "./machine-names.ts";
