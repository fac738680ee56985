using InspectLog.Photos.Developing;
using InspectLog.Photos.Worker;

namespace InspectLog.TestWorker;

/// <summary>A photo worker that misbehaves on pictures of a given width, and develops others as the real one does.</summary>
internal static class ScriptedPhotos
{
    /// <summary>Pictures as wide as this never end.</summary>
    private const int Endless = 61;

    /// <summary>Pictures as wide as this take memory without end.</summary>
    private const int Greedy = 62;

    /// <summary>Pictures as wide as this end the process.</summary>
    private const int Deadly = 63;

    /// <summary>Pictures as wide as this end the process once, the first time a file is not there yet.</summary>
    private const int DeadlyOnce = 64;

    /// <summary>Pictures as wide as this wait without work, as one does that waits for a lock.</summary>
    private const int Sleeping = 65;

    public static async Task RunAsync(string? file)
    {
        await using var fromParent = Console.OpenStandardInput();
        await using var toParent = Console.OpenStandardOutput();
        await PhotoWorkerServer.RunAsync(fromParent, toParent, (work, original) => Develop(work, original, file));
    }

    private static PhotoAnswer Develop(PhotoWork work, ReadOnlyMemory<byte> original, string? file)
    {
        var answer = PhotoDeveloper.Develop(work, original);
        switch ((answer as PhotoAnswer.Copies)?.Figures.Width)
        {
            case Endless:
                Spin();
                break;
            case Greedy:
                Fill();
                break;
            case Deadly:
                Environment.Exit(139);
                break;
            case DeadlyOnce when file is not null && !File.Exists(file):
                File.WriteAllText(file, "");
                Environment.Exit(139);
                break;
            case Sleeping:
                Thread.Sleep(Timeout.Infinite);
                break;
        }

        return answer;
    }

    private static void Spin()
    {
        var spinner = new SpinWait();
        while (true)
        {
            spinner.SpinOnce(sleep1Threshold: -1);
        }
    }

    /// <summary>Memory outside of the runtime's own heap, as the picture library takes it, written to so that it counts.
    /// </summary>
    private static unsafe void Fill()
    {
        const int piece = 8_000_000;
        while (true)
        {
            new Span<byte>(System.Runtime.InteropServices.NativeMemory.Alloc(piece), piece).Fill(1);
            Thread.Sleep(5);
        }
    }
}
