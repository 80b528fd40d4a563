"""HTTPS for a home network: a small certificate authority, and a server's certificate that renews by itself.

The authority can vouch for nothing but private names and addresses (RFC 5280, 4.2.1.10), so a phone that trusts it
risks nothing elsewhere, even if its key is stolen. Keys are on P-256, each in a file with its certificate that only
its owner may read.
"""

from __future__ import annotations

import ssl
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from ipaddress import IPv4Network, IPv6Network, ip_address, ip_network
from pathlib import Path

from cryptography import x509
from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.hashes import SHA256
from cryptography.hazmat.primitives.serialization import Encoding, NoEncryption, PrivateFormat, load_pem_private_key
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

from labels.whole import write_whole

AUTHORITY_LASTS = timedelta(days=3650)
LASTS = timedelta(days=390)
"""Below the 397 days that browsers take."""

RENEWED_BEFORE = timedelta(days=30)
SLOW_CLOCK = timedelta(days=1)
"""How far a phone's clock may be behind this machine's."""

DOMAINS = ("localhost", "local", "home.arpa", "internal")
"""Names that nobody can own: RFC 6761, RFC 6762, RFC 8375, and what ICANN reserved for private use in 2024."""

NETWORKS = tuple(
    ip_network(each)
    for each in (
        *("127.0.0.0/8", "10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "169.254.0.0/16"),  # RFC 1918, 3927
        *("::1/128", "fc00::/7", "fe80::/10"),  # RFC 4193, 4291
    )
)


class BadCertificate(Exception):
    """A certificate with its key can't be used; the message says why."""


@dataclass(frozen=True, slots=True)
class Pair:
    """A certificate and its key."""

    certificate: x509.Certificate
    key: ec.EllipticCurvePrivateKey

    @classmethod
    def read(cls, path: Path) -> Pair:
        pem = path.read_bytes()
        try:
            key = load_pem_private_key(pem, None)
            certificate = x509.load_pem_x509_certificate(pem)
        except ValueError as error:
            raise BadCertificate(f"{path} is damaged. Remove it, and start again: {error}") from error
        assert isinstance(key, ec.EllipticCurvePrivateKey)
        return cls(certificate, key)

    def pem(self, *more: x509.Certificate) -> bytes:
        key = self.key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption())
        return key + b"".join(each.public_bytes(Encoding.PEM) for each in (self.certificate, *more))


@dataclass(frozen=True, slots=True)
class OwnCertificate:
    """A certificate of one's own, from elsewhere: files in PEM. Read again now and then, as others renew it."""

    cert: Path
    key: Path | None = None

    def context(self, now: datetime) -> ssl.SSLContext:
        return _context(self.cert, self.key)

    def names(self) -> list[str]:
        """The names and addresses that it is for."""
        try:
            found = x509.load_pem_x509_certificate(self.cert.read_bytes()).extensions
            alternatives = found.get_extension_for_class(x509.SubjectAlternativeName).value
        except (OSError, ValueError, x509.ExtensionNotFound):
            return []  # what is wrong with it, `context` says
        names = alternatives.get_values_for_type(x509.DNSName)
        return [*names, *map(str, alternatives.get_values_for_type(x509.IPAddress))]


@dataclass(frozen=True, slots=True)
class Home:
    """The authority in a folder, and the certificate for what `names` gives: host names and addresses, first the
    machine's own name.
    """

    folder: Path
    names: Callable[[], list[str]]

    def context(self, now: datetime) -> ssl.SSLContext:
        """For a server, with a certificate that is good now; made or renewed if need be."""
        path = self.folder / "server.pem"
        authority, names = self.authority(now), self.names()
        if not _fits(path, authority.certificate, _alternatives(names, authority.certificate), now):
            server = issue(authority, names, now)
            _write(path, server.pem(authority.certificate))
        return _context(path, None)

    def authority(self, now: datetime) -> Pair:
        """The authority, made anew only when it is about to end: each phone has to trust it by hand."""
        path = self.folder / "authority.pem"
        if path.exists():
            found = Pair.read(path)
            if found.certificate.not_valid_after_utc - RENEWED_BEFORE > now:
                return found
        _write(path, make_authority(self.names()[0], now).pem())
        return Pair.read(path)


def fingerprint(certificate: x509.Certificate) -> str:
    """SHA-256 in pairs of hex digits, as phones show it."""
    return certificate.fingerprint(SHA256()).hex(" ").upper()


def make_authority(host: str, now: datetime) -> Pair:
    """An authority for private names and addresses, and for the single-word name that the machine has."""
    domains = [*DOMAINS, host.lower()] if _is_word(host) else list(DOMAINS)
    # e-mail of a host that can't be (RFC 6761, 6.4): a kind of name that no constraint speaks of would be free
    permitted = [*map(x509.DNSName, domains), *map(x509.IPAddress, NETWORKS), x509.RFC822Name("invalid")]
    constraints = x509.NameConstraints(permitted, None)
    key = ec.generate_private_key(ec.SECP256R1())
    name = _named(f"scanflow on {host}"[:64])
    builder = _builder(name, name, key.public_key(), now, now + AUTHORITY_LASTS)
    certificate = (
        builder.add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(_usage(signs=True), critical=True)
        .add_extension(constraints, critical=True)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .sign(key, SHA256())
    )
    return Pair(certificate, key)


def issue(authority: Pair, names: Iterable[str], now: datetime) -> Pair:
    """A server's certificate for those of the names that the authority may vouch for."""
    key = ec.generate_private_key(ec.SECP256R1())
    issuer = authority.certificate
    end = min(now - SLOW_CLOCK + LASTS, issuer.not_valid_after_utc)
    alternatives = _alternatives(names, issuer)
    builder = _builder(_named("scanflow server"), issuer.subject, key.public_key(), now, end)
    identifier = issuer.extensions.get_extension_for_class(x509.SubjectKeyIdentifier).value
    certificate = (
        builder.add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(_usage(signs=False), critical=True)
        .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
        .add_extension(x509.SubjectAlternativeName(alternatives), critical=False)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .add_extension(x509.AuthorityKeyIdentifier.from_issuer_subject_key_identifier(identifier), critical=False)
        .sign(authority.key, SHA256())
    )
    return Pair(certificate, key)


def _builder(
    subject: x509.Name, issuer: x509.Name, key: ec.EllipticCurvePublicKey, now: datetime, end: datetime
) -> x509.CertificateBuilder:
    return x509.CertificateBuilder(
        issuer_name=issuer,
        subject_name=subject,
        public_key=key,
        serial_number=x509.random_serial_number(),
        not_valid_before=now - SLOW_CLOCK,
        not_valid_after=end,
    )


def _named(text: str) -> x509.Name:
    return x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, text)])


def _usage(*, signs: bool) -> x509.KeyUsage:
    names = ("content_commitment", "key_encipherment", "data_encipherment", "key_agreement", "crl_sign")
    return x509.KeyUsage(
        digital_signature=not signs,
        key_cert_sign=signs,
        encipher_only=False,
        decipher_only=False,
        **dict.fromkeys(names, False),
    )


def _is_word(name: str) -> bool:
    return "." not in name and ":" not in name and name.isascii() and name.replace("-", "").isalnum()


def _alternatives(names: Iterable[str], authority: x509.Certificate) -> list[x509.GeneralName]:
    """The names and addresses among these that the authority may vouch for, each once."""
    constraints = authority.extensions.get_extension_for_class(x509.NameConstraints).value
    permitted = constraints.permitted_subtrees or []
    domains = [each.value for each in permitted if isinstance(each, x509.DNSName)]
    vouched = [each.value for each in permitted if isinstance(each, x509.IPAddress)]
    networks = [each for each in vouched if isinstance(each, IPv4Network | IPv6Network)]
    found: dict[x509.GeneralName, None] = {}
    for name in names:
        try:
            address = ip_address(name)
        except ValueError:
            if any(name.lower() == each or name.lower().endswith("." + each) for each in domains):
                found[x509.DNSName(name.lower())] = None
        else:
            if any(address in each for each in networks):
                found[x509.IPAddress(address)] = None
    return list(found)


def _fits(path: Path, authority: x509.Certificate, wanted: list[x509.GeneralName], now: datetime) -> bool:
    """Whether the server's certificate in a file is the authority's, good for a while, and for these names."""
    try:
        certificate = Pair.read(path).certificate
        certificate.verify_directly_issued_by(authority)
    except (FileNotFoundError, BadCertificate, ValueError, InvalidSignature):  # none, or another authority's
        return False
    named = certificate.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    good = certificate.not_valid_before_utc <= now < certificate.not_valid_after_utc - RENEWED_BEFORE
    return good and set(named) == set(wanted)


def _write(path: Path, content: bytes) -> None:
    """Whole or not at all, and for its owner's eyes only."""
    path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    write_whole(path, content, 0o600)


def _context(cert: Path, key: Path | None) -> ssl.SSLContext:
    context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    context.minimum_version = ssl.TLSVersion.TLSv1_2
    context.set_alpn_protocols(["http/1.1"])
    try:
        context.load_cert_chain(cert, key, password=lambda: "")
    except OSError as error:  # ssl.SSLError among them
        raise BadCertificate(f"The certificate {cert} can't be used: {error.strerror or error}") from error
    return context
