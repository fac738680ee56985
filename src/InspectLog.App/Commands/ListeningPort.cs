using System.CommandLine;
using System.Globalization;

namespace InspectLog.App.Commands;

/// <summary>Options that name ports the web app listens on.</summary>
internal static class ListeningPort
{
    private const int Usual = 5757;

    /// <summary>The port on this computer only.</summary>
    public static Option<int> Option() => Option("--port", Usual, "Port to listen on, on this computer only; 0 takes a free one.");

    /// <summary>Another port.</summary>
    public static Option<int> Option(string name, int usual, string description) => new(name)
    {
        Description = description,
        HelpName = "N",
        DefaultValueFactory = _ => usual,
        CustomParser = result =>
        {
            if (ushort.TryParse(result.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var port))
                return port;
            result.AddError($"A port is a whole number from 0 to {ushort.MaxValue}.");
            return 0;
        },
    };
}
