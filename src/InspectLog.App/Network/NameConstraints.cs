using System.Formats.Asn1;
using System.Net;
using System.Security.Cryptography.X509Certificates;
using System.Text;

namespace InspectLog.App.Network;

/// <summary>The extension of an authority's certificate that says which names it may speak for (RFC 5280, 4.2.1.10): who
/// gets hold of its key still cannot pass for a site on the internet.</summary>
internal static class NameConstraints
{
    private const string Oid = "2.5.29.30";
    private static readonly Asn1Tag Permitted = new(TagClass.ContextSpecific, 0);
    private static readonly Asn1Tag DnsName = new(TagClass.ContextSpecific, 2);
    private static readonly Asn1Tag Address = new(TagClass.ContextSpecific, 7);

    /// <summary>Permits names at or below some domains, and addresses of some networks, and nothing else.</summary>
    public static X509Extension Only(IEnumerable<string> domains, IEnumerable<IPNetwork> networks)
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        using (writer.PushSequence(Permitted))
        {
            foreach (var domain in domains)
            {
                Subtree(writer, DnsName, Encoding.ASCII.GetBytes(domain));
            }

            foreach (var network in networks)
            {
                Subtree(writer, Address, [.. network.BaseAddress.GetAddressBytes(), .. Mask(network)]);
            }
        }

        return new X509Extension(Oid, writer.Encode(), critical: true);
    }

    private static void Subtree(AsnWriter writer, Asn1Tag sort, byte[] name)
    {
        using (writer.PushSequence())
        {
            writer.WriteOctetString(name, sort);
        }
    }

    private static byte[] Mask(IPNetwork network) =>
        [.. network.BaseAddress.GetAddressBytes().Select((_, at) => (byte)(0xFF00 >> Math.Clamp(network.PrefixLength - 8 * at, 0, 8)))];
}
