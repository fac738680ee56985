using System.Net;
using System.Net.Sockets;

namespace InspectLog.App.Tests.Access;

/// <summary>Connects from a loopback address of one's choice, as another device would come from another address.</summary>
internal static class LocalSocket
{
    public static async ValueTask<Stream> ConnectAsync(string from, DnsEndPoint to, CancellationToken cancellation)
    {
        var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        try
        {
            socket.Bind(new IPEndPoint(IPAddress.Parse(from), 0));
            await socket.ConnectAsync(to, cancellation);
            return new NetworkStream(socket, ownsSocket: true);
        }
        catch
        {
            socket.Dispose();
            throw;
        }
    }
}
