using System.Net.Sockets;
using InspectLog.App.Hosting;
using InspectLog.App.Network;
using InspectLog.Dictation.Hearing;
using Microsoft.AspNetCore.Connections;

namespace InspectLog.App.Commands;

/// <summary>Runs the web app for a verb until it is stopped.</summary>
internal static class Serving
{
    /// <summary>How long it may take to stop in good order: the lists have to be closed, else the next start makes
    /// them again.</summary>
    public static readonly TimeSpan TimeToStop = TimeSpan.FromMinutes(1);

    public static async Task<int> RunAsync(
        Surroundings surroundings, string dataFolder, int port, SpeechStart speechStart, NetworkOptions? network, bool opens, CancellationToken stop,
        bool isLookedAtOnly = false, bool isInvented = false)
    {
        var speech = surroundings.OpenSpeechApart(speechStart.ModelFile);

        // The model's file is read through for that, which takes longer than the rest of a start.
        var told = Task.Run(() => TellWhatKeepsFromHearing(speech, surroundings.Error), CancellationToken.None);
        var options = new WebHostOptions(dataFolder, port, () => speech)
        {
            Time = surroundings.Time,
            Photos = () => PhotoWorkerVerb.Open(surroundings.Time),
            Opening = new OpeningProgress(surroundings.Error, surroundings.Time),
            LoadsSpeechAtStart = !speechStart.WhenNeeded,
            Network = network,
            IsLookedAtOnly = isLookedAtOnly,
            RemindsOfBackups = !isInvented,
            KeepUploadsIn = surroundings.KeepUploadsIn,
            Listening = addresses =>
            {
                Tell(surroundings.Out, addresses, network is not null);
                if (opens && !surroundings.Browse(addresses.Workshop))
                    surroundings.Error.WriteLine("No browser was found to show it. Open the address above by hand.");
            },
        };
        try
        {
            await WebHost.RunAsync(options, stop);
            await told;
            return ExitCodes.Done;
        }
        catch (IOException e) when (e.InnerException is AddressInUseException)
        {
            throw new CommandException(ExitCodes.Cannot, TakenPort(e.Message, port, network), e);
        }
        catch (SocketException e)
        {
            throw new CommandException(
                ExitCodes.Cannot, $"Port {port} cannot be used here ({e.Message}). Choose another with --port N.", e);
        }
    }

    private static void TellWhatKeepsFromHearing(ISpeechToText speech, TextWriter to)
    {
        if (speech.Readiness.Problem is { } problem)
            to.WriteLine(problem);
    }

    private static void Tell(TextWriter to, OpenAddresses addresses, bool isOpenToNetwork)
    {
        to.WriteLine($"InspectLog is open at {addresses.Workshop}");
        if (addresses.Phones.Count > 0)
        {
            to.WriteLine($"For phones: {string.Join(" or ", addresses.Phones)}");
            to.WriteLine($"Pair them at {new Uri(addresses.Workshop, Links.Devices)}; their first visit is to {addresses.Certificate[0]}");
        }
        else if (isOpenToNetwork)
        {
            to.WriteLine("This computer has no address on a local network at present, so no phone finds it. Connect it; nothing need be started anew.");
        }
    }

    /// <summary>The server says which address is taken; with one listener that is the port that was asked for.</summary>
    private static string TakenPort(string message, int port, NetworkOptions? network)
    {
        var (taken, option) = network switch
        {
            { Port: > 0 and var phones } when message.Contains($":{phones}:", StringComparison.Ordinal) => (phones, "--lan-port"),
            { CertificatePort: > 0 and var page } when message.Contains($":{page}:", StringComparison.Ordinal) => (page, "--certificate-port"),
            _ => (port, "--port"),
        };
        return $"Port {taken} is taken, perhaps by InspectLog itself. Stop that program, or choose another port with {option} N.";
    }
}
