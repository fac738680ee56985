using System.Net.Sockets;
using InspectLog.App.Hosting;
using Microsoft.AspNetCore.Connections;

namespace InspectLog.App.Commands;

/// <summary>Runs the web app for a verb until it is stopped.</summary>
internal static class Serving
{
    /// <summary>How long it may take to stop in good order: the lists have to be closed, else the next start makes
    /// them again.</summary>
    public static readonly TimeSpan TimeToStop = TimeSpan.FromMinutes(1);

    public static async Task<int> RunAsync(
        Surroundings surroundings, string dataFolder, int port, string? modelFile, CancellationToken stop)
    {
        var speech = surroundings.OpenSpeechApart(modelFile);
        if (speech.Readiness.Problem is { } problem)
            surroundings.Error.WriteLine(problem);

        var options = new WebHostOptions(dataFolder, port, () => speech)
        {
            Time = surroundings.Time,
            Opening = new OpeningProgress(surroundings.Error, surroundings.Time),
            Listening = address => surroundings.Out.WriteLine($"InspectLog is open at {address}"),
        };
        try
        {
            await WebHost.RunAsync(options, stop);
            return ExitCodes.Done;
        }
        catch (IOException e) when (e.InnerException is AddressInUseException)
        {
            throw new CommandException(
                ExitCodes.Cannot,
                $"Port {port} is taken, perhaps by InspectLog itself. Stop that program, or choose another port with --port N.",
                e);
        }
        catch (SocketException e)
        {
            throw new CommandException(
                ExitCodes.Cannot, $"Port {port} cannot be used here ({e.Message}). Choose another with --port N.", e);
        }
    }
}
