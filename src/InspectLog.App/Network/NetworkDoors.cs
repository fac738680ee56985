using System.Net;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.Server.Kestrel.Https;

namespace InspectLog.App.Network;

/// <summary>Opens the listeners on the local network.</summary>
public static class NetworkDoors
{
    /// <summary>Listens for phones by HTTPS, and by HTTP for who wants the certificate.</summary>
    public static void OpenToNetwork(this KestrelServerOptions kestrel, NetworkOptions network, WorkshopCertificates certificates)
    {
        foreach (var address in network.Only.DefaultIfEmpty(IPAddress.Any))
        {
            kestrel.Listen(address, network.Port, listen =>
            {
                listen.Through(Door.Network);
                listen.UseHttps(new TlsHandshakeCallbackOptions
                {
                    OnConnection = _ => ValueTask.FromResult(certificates.Options()),
                });
            });
            kestrel.Listen(address, network.CertificatePort, listen => listen.Through(Door.Certificate));
        }
    }
}
