import 'reflect-metadata';
import { AsnConvert } from '@peculiar/asn1-schema';
import {
  GeneralName,
  GeneralSubtree,
  GeneralSubtrees,
  id_ce_nameConstraints,
  NameConstraints,
} from '@peculiar/asn1-x509';
import { Extension } from '@peculiar/x509';
import { PRIVATE_RANGES } from './private-ranges';

/** Names that only the network around us can resolve (RFC 6762) and this computer's own (RFC 6761). */
const LOCAL_NAMES = ['local', 'localhost'];

/**
 * What the authority can vouch for (RFC 5280, 4.2.1.10): private networks, names of the local network, and the addresses given.
 * A phone that trusts it thereby trusts no web site, even if the laptop's key is stolen.
 */
export function limitNames(addresses: readonly string[]): Extension {
  const ranges = [...PRIVATE_RANGES, ...addresses.map((address) => `${address}/32`)];
  const bases = [
    ...ranges.map((iPAddress) => new GeneralName({ iPAddress })),
    ...LOCAL_NAMES.map((dNSName) => new GeneralName({ dNSName })),
  ];
  const permittedSubtrees = new GeneralSubtrees(bases.map((base) => new GeneralSubtree({ base })));
  const value = AsnConvert.serialize(new NameConstraints({ permittedSubtrees }));
  return new Extension(id_ce_nameConstraints, true, value);
}
