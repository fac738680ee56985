using System.ComponentModel;
using System.Diagnostics;
using InspectLog.Dictation.Hearing;

namespace InspectLog.Benchmarks.Dictation.Voices;

/// <summary>A synthetic voice of Debian's flite, at 16 kHz.</summary>
/// <param name="Name">Its name in flite.</param>
internal sealed record FliteVoice(string Name)
{
    /// <summary>The voices scored. The shipped model was adapted on slt, rms and kal16; awb it has never heard.</summary>
    public static IReadOnlyList<FliteVoice> All { get; } = [new("slt"), new("rms"), new("awb"), new("kal16")];

    /// <summary>Speaks a text.</summary>
    /// <exception cref="ScoringException">flite is missing or failed.</exception>
    public async Task<PcmAudio> SpeakAsync(string text)
    {
        var file = Path.GetTempFileName();
        try
        {
            using var flite = Start(text, file);
            await flite.WaitForExitAsync();
            return WavFile.Read(await File.ReadAllBytesAsync(file)) is WavResult.Ok ok && flite.ExitCode == 0
                ? ok.Audio
                : throw new ScoringException($"flite failed with exit code {flite.ExitCode} on \"{text}\".");
        }
        finally
        {
            File.Delete(file);
        }
    }

    private Process Start(string text, string file)
    {
        try
        {
            return Process.Start(new ProcessStartInfo("flite", ["-voice", Name, "-t", text, "-o", file]))!;
        }
        catch (Win32Exception e)
        {
            throw new ScoringException("The program flite is missing. On Debian: apt install flite", e);
        }
    }
}
