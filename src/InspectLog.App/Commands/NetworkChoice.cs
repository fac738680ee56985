using System.CommandLine;
using System.CommandLine.Parsing;
using System.Net;
using InspectLog.App.Network;

namespace InspectLog.App.Commands;

/// <summary>The options that open the web app to the local network.</summary>
internal sealed class NetworkChoice
{
    private const int UsualPort = 5758;
    private const int UsualCertificatePort = 5759;

    private readonly Option<bool> _lan = new("--lan")
    {
        Description = "Let paired phones in by HTTPS over the local network.",
    };

    private readonly Option<IPAddress[]> _addresses = new("--lan-address")
    {
        Description = "Listen on this address of the computer only; may be given several times.",
        HelpName = "ADDRESS",
        CustomParser = result => [.. result.Tokens.Select(token => AddressOf(token.Value, result.AddError)).OfType<IPAddress>()],
    };

    private readonly Option<int> _port = ListeningPort.Option("--lan-port", UsualPort, "Port for phones (HTTPS); 0 takes a free one.");

    private readonly Option<int> _certificatePort =
        ListeningPort.Option("--certificate-port", UsualCertificatePort, "Port of the page that hands phones the certificate (HTTP); 0 takes a free one.");

    public void AddTo(Command verb)
    {
        verb.Add(_lan);
        verb.Add(_addresses);
        verb.Add(_port);
        verb.Add(_certificatePort);
    }

    /// <summary>What was chosen; null keeps the app to this computer.</summary>
    public NetworkOptions? Of(ParseResult arguments) => arguments.GetValue(_lan) || arguments.GetValue(_addresses) is { Length: > 0 }
        ? new(arguments.GetValue(_addresses) ?? [], arguments.GetValue(_port), arguments.GetValue(_certificatePort))
        : null;

    /// <summary>Whether the app is to be open to the network.</summary>
    public bool IsAsked(CommandResult given) => given.GetValue(_lan) || given.GetValue(_addresses) is { Length: > 0 };

    private static IPAddress? AddressOf(string text, Action<string> refuse)
    {
        if (IPAddress.TryParse(text, out var address) && PrivateNetworks.Hold(address))
        {
            return address;
        }

        refuse($"\"{text}\" is not an address of a local network. Give one of this computer, such as 192.168.1.20.");
        return null;
    }
}
