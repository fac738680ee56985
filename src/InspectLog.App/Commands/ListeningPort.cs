using System.CommandLine;
using System.Globalization;
using System.Net.Sockets;
using InspectLog.App.Hosting;
using Microsoft.AspNetCore.Connections;

namespace InspectLog.App.Commands;

/// <summary>The port the web app listens on, and what is said when it cannot have it.</summary>
internal static class ListeningPort
{
    private const int Usual = 5757;

    public static Option<int> Option() => new("--port")
    {
        Description = "Port to listen on, on this computer only; 0 takes a free one.",
        HelpName = "N",
        DefaultValueFactory = _ => Usual,
        CustomParser = result =>
        {
            if (ushort.TryParse(result.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var port))
                return port;
            result.AddError($"A port is a whole number from 0 to {ushort.MaxValue}.");
            return 0;
        },
    };

    public static async Task RunAsync(WebHostOptions options, CancellationToken stop)
    {
        try
        {
            await WebHost.RunAsync(options, stop);
        }
        catch (IOException e) when (e.InnerException is AddressInUseException)
        {
            throw new CommandException(
                ExitCodes.Cannot,
                $"Port {options.Port} is taken, perhaps by InspectLog itself. Stop that program, or choose another port with --port N.",
                e);
        }
        catch (SocketException e)
        {
            throw new CommandException(
                ExitCodes.Cannot, $"Port {options.Port} cannot be used here ({e.Message}). Choose another with --port N.", e);
        }
    }
}
