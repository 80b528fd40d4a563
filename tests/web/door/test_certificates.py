"""The authority vouches for private names and addresses alone; the server's certificate renews by itself."""

from __future__ import annotations

import hashlib
import socket
import ssl
import stat
import threading
from datetime import UTC, datetime, timedelta
from ipaddress import ip_address
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.serialization import Encoding
from cryptography.x509.verification import PolicyBuilder, Store, VerificationError

from scanflow.web.door import certificates
from scanflow.web.door.certificates import BadCertificate, Home, OwnCertificate, Pair

NOW = datetime.now(UTC).replace(microsecond=0)
NAMES = ["bench", "bench.local", "localhost", "192.168.1.7", "127.0.0.1", "::1"]


def home(folder: Path, names: list[str] | None = None) -> Home:
    return Home(folder / "https", lambda: NAMES if names is None else names)


def served(folder: Path) -> x509.Certificate:
    return Pair.read(folder / "https" / "server.pem").certificate


def shake(context: ssl.SSLContext, authority: x509.Certificate, name: str) -> str:
    """A handshake of OpenSSL with itself, over a real connection: the protocol, or why the client refuses."""
    client = ssl.create_default_context(cadata=authority.public_bytes(Encoding.PEM).decode())
    here, there = socket.socketpair()

    def serve() -> None:
        try:
            context.wrap_socket(there, server_side=True).close()
        except OSError:
            there.close()

    serving = threading.Thread(target=serve)
    serving.start()
    try:
        with client.wrap_socket(here, server_hostname=name) as secured:
            return secured.version() or ""
    except ssl.SSLCertVerificationError as error:
        return error.verify_message
    finally:
        here.close()
        serving.join()


@pytest.mark.parametrize("name", NAMES)
def test_a_client_that_trusts_the_authority_comes_in(tmp_path: Path, name: str) -> None:
    """OpenSSL shakes hands with each of the machine's names and addresses."""
    context = home(tmp_path).context(NOW)
    assert "TLSv1.3" == shake(context, home(tmp_path).authority(NOW).certificate, name)


@pytest.mark.parametrize("name", ["shop.example", "other.local", "192.168.1.8", "bench.local.example"])
def test_another_name_is_refused(tmp_path: Path, name: str) -> None:
    """OpenSSL refuses a name that the certificate doesn't have."""
    context = home(tmp_path).context(NOW)
    assert "mismatch" in shake(context, home(tmp_path).authority(NOW).certificate, name)


def test_another_authority_is_refused(tmp_path: Path) -> None:
    """OpenSSL refuses a certificate of an authority that it was not told to trust."""
    context = home(tmp_path).context(NOW)
    assert "self-signed" in shake(context, certificates.make_authority("bench", NOW).certificate, "bench")


OUTSIDE = ["shop.example", "www.bench.example", "8.8.8.8", "172.32.0.1", "2001:db8::1"]


def forged(authority: Pair, name: str) -> Pair:
    """A certificate that a thief of the key would sign: for a name outside; for e-mail, beside a name inside."""
    key = ec.generate_private_key(ec.SECP256R1())
    try:
        alternative: x509.GeneralName = x509.IPAddress(ip_address(name))
    except ValueError:
        alternative = x509.RFC822Name(name) if "@" in name else x509.DNSName(name)
    inside = [x509.DNSName("localhost")] if "@" in name else []
    own = certificates.issue(authority, ["localhost"], NOW).certificate
    builder = x509.CertificateBuilder(
        own.issuer, own.subject, key.public_key(), 7, own.not_valid_before_utc, own.not_valid_after_utc
    )
    for extension in own.extensions:
        named = isinstance(extension.value, x509.SubjectAlternativeName)
        builder = builder.add_extension(
            x509.SubjectAlternativeName([alternative, *inside]) if named else extension.value, extension.critical
        )
    return Pair(builder.sign(authority.key, authority.certificate.signature_hash_algorithm), key)


@pytest.mark.parametrize("name", OUTSIDE)
def test_a_stolen_authority_is_good_for_nothing_outside(tmp_path: Path, name: str) -> None:
    """OpenSSL refuses a name outside the permitted subtrees (RFC 5280, 4.2.1.10), though the signature is right."""
    authority = certificates.make_authority("bench", NOW)
    (tmp_path / "forged.pem").write_bytes(forged(authority, name).pem())
    context = OwnCertificate(tmp_path / "forged.pem").context(NOW)
    assert "permitted subtree violation" == shake(context, authority.certificate, name)


def test_a_stolen_authority_vouches_for_no_e_mail(tmp_path: Path) -> None:
    """Of e-mail it may name one host that can't be (RFC 5280, 4.2.1.10; RFC 6761, 6.4): OpenSSL refuses all others."""
    authority = certificates.make_authority("bench", NOW)
    (tmp_path / "forged.pem").write_bytes(forged(authority, "owner@shop.example").pem())
    context = OwnCertificate(tmp_path / "forged.pem").context(NOW)
    assert "permitted subtree violation" == shake(context, authority.certificate, "localhost")


@pytest.mark.parametrize("name", [*NAMES, *OUTSIDE])
def test_a_second_verifier_agrees(name: str) -> None:
    """cryptography's own path validation takes the names inside and refuses those outside."""
    authority = certificates.make_authority("bench", NOW)
    inside = name in NAMES
    server = certificates.issue(authority, NAMES, NOW) if inside else forged(authority, name)
    try:
        subject: x509.GeneralName = x509.IPAddress(ip_address(name))
    except ValueError:
        subject = x509.DNSName(name)
    builder = PolicyBuilder().store(Store([authority.certificate])).time(NOW)
    verifier = builder.build_server_verifier(subject)  # type: ignore[arg-type]
    if inside:
        assert 2 == len(verifier.verify(server.certificate, []))
    else:
        with pytest.raises(VerificationError):
            verifier.verify(server.certificate, [])


def test_only_private_names_are_asked_for(tmp_path: Path) -> None:
    """A name or address that the authority may not vouch for is left out of the certificate."""
    home(tmp_path, ["bench", "bench.example", "8.8.8.8", "BENCH.local", "bench.local"]).context(NOW)
    named = served(tmp_path).extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    assert ["bench", "bench.local"] == named.get_values_for_type(x509.DNSName)
    assert [] == named.get_values_for_type(x509.IPAddress)


def test_kind_and_age(tmp_path: Path) -> None:
    """Keys are on P-256; the server's certificate is good now, for a slow clock too, and for 397 days at most."""
    home(tmp_path).context(NOW)
    certificate, authority = served(tmp_path), home(tmp_path).authority(NOW).certificate
    kinds = {type(each.public_key().curve) for each in (certificate, authority)}  # type: ignore[union-attr]
    assert {ec.SECP256R1} == kinds
    # Apple, “About upcoming limits on trusted certificates”: 398 days or fewer (from memory)
    lasts = certificate.not_valid_after_utc - certificate.not_valid_before_utc
    assert timedelta(days=365) <= lasts <= timedelta(days=397)
    assert certificate.not_valid_before_utc <= NOW - timedelta(hours=12)
    assert authority.extensions.get_extension_for_class(x509.NameConstraints).critical
    assert 0 == authority.extensions.get_extension_for_class(x509.BasicConstraints).value.path_length


def test_keys_are_for_their_owner(tmp_path: Path) -> None:
    """The files with keys have mode 0600, in a folder of mode 0700, and nothing else lies about."""
    home(tmp_path).context(NOW)
    folder = tmp_path / "https"
    modes = {each.name: stat.S_IMODE(each.stat().st_mode) for each in folder.iterdir()}
    assert {"authority.pem": 0o600, "server.pem": 0o600} == modes
    assert 0o700 == stat.S_IMODE(folder.stat().st_mode)


@pytest.mark.parametrize(
    ("days", "names", "same"),
    [
        (0, NAMES, True),
        (300, NAMES, True),
        (300, NAMES[::-1], True),
        (0, [*NAMES, "192.168.1.8"], False),
        (0, NAMES[:-1], False),
        (365, NAMES, False),
        (500, NAMES, False),
        (-2, NAMES, False),
    ],
)
def test_renewal(tmp_path: Path, days: int, names: list[str], same: bool) -> None:
    """The certificate stays while it fits, and is made anew near its end, for other names, or with the clock put back.
    The authority stays: phones trust it still.
    """
    home(tmp_path).context(NOW)
    before, authority = served(tmp_path), home(tmp_path).authority(NOW).certificate
    later = NOW + timedelta(days=days)
    home(tmp_path, names).context(later)
    after = served(tmp_path)
    assert same is (before == after)
    assert after.not_valid_before_utc <= later < after.not_valid_after_utc - timedelta(days=29)
    assert authority == home(tmp_path).authority(later).certificate


def test_the_authority_ends_after_ten_years(tmp_path: Path) -> None:
    """Near its end another takes its place, and the server's certificate is one of its."""
    home(tmp_path).context(NOW)
    before = home(tmp_path).authority(NOW).certificate
    later = before.not_valid_after_utc - timedelta(days=30)
    home(tmp_path).context(later)
    after = home(tmp_path).authority(later).certificate
    assert before != after
    served(tmp_path).verify_directly_issued_by(after)


def test_no_certificate_outlives_its_authority(tmp_path: Path) -> None:
    """In the authority's last year the server's certificate ends with it."""
    authority = home(tmp_path).authority(NOW).certificate
    later = authority.not_valid_after_utc - timedelta(days=100)
    home(tmp_path).context(later)
    assert authority.not_valid_after_utc == served(tmp_path).not_valid_after_utc


def test_a_damaged_certificate(tmp_path: Path) -> None:
    """A damaged server's certificate is made anew; a damaged authority is told, as phones trust it."""
    home(tmp_path).context(NOW)
    (tmp_path / "https" / "server.pem").write_text("nothing")
    home(tmp_path).context(NOW)
    served(tmp_path)
    (tmp_path / "https" / "authority.pem").write_text("nothing")
    with pytest.raises(BadCertificate, match=r"authority\.pem is damaged"):
        home(tmp_path).context(NOW)


def test_a_certificate_of_ones_own(tmp_path: Path) -> None:
    """It may stand in one file with its key or in two; a key of another is told."""
    authority = certificates.make_authority("bench", NOW)
    one, two = (certificates.issue(authority, NAMES, NOW) for _ in range(2))
    (tmp_path / "one.pem").write_bytes(one.pem())
    (tmp_path / "two.pem").write_bytes(two.pem())
    (tmp_path / "cert.pem").write_bytes(one.certificate.public_bytes(Encoding.PEM))
    own = OwnCertificate(tmp_path / "cert.pem", tmp_path / "one.pem")
    assert "TLSv1.3" == shake(own.context(NOW), authority.certificate, "bench")
    for bad in (OwnCertificate(tmp_path / "cert.pem"), OwnCertificate(tmp_path / "cert.pem", tmp_path / "two.pem")):
        with pytest.raises(BadCertificate, match=r"cert\.pem can't be used"):
            bad.context(NOW)


def test_the_fingerprint_is_as_phones_show_it() -> None:
    """SHA-256 of the certificate in DER, in pairs of upper-case hex digits."""
    certificate = certificates.make_authority("bench", NOW).certificate
    wanted = hashlib.sha256(certificate.public_bytes(Encoding.DER)).hexdigest()
    told = certificates.fingerprint(certificate)
    assert (wanted, 32) == (told.replace(" ", "").lower(), len(told.split()))
