using System.CommandLine;
using System.Globalization;

namespace InspectLog.App.Commands;

/// <summary>The option that names the port the web app listens on.</summary>
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
}
