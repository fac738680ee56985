using System.Net;

namespace InspectLog.App.Network;

/// <summary>How the program is opened to the local network.</summary>
/// <param name="Only">The addresses to listen on; empty for all.</param>
/// <param name="Port">TCP port of HTTPS; 0 takes a free one.</param>
/// <param name="CertificatePort">TCP port of the page that hands out the certificate; 0 takes a free one.</param>
public sealed record NetworkOptions(IReadOnlyList<IPAddress> Only, int Port, int CertificatePort);
