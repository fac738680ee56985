using System.ComponentModel;
using System.Diagnostics;
using InspectLog.Dictation.Hearing;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Unpacks FLAC recordings with Debian's flac.</summary>
internal static class FlacFile
{
    public static async Task<PcmAudio> ReadAsync(string path)
    {
        using var flac = Start(path);
        using var wav = new MemoryStream();
        await flac.StandardOutput.BaseStream.CopyToAsync(wav);
        await flac.WaitForExitAsync();
        return WavFile.Read(wav.ToArray()) switch
        {
            WavResult.Ok ok when flac.ExitCode == 0 => ok.Audio,
            WavResult.Refused refused => throw new ScoringException($"{path}: {refused.Message}"),
            _ => throw new ScoringException($"{path}: flac failed with exit code {flac.ExitCode}."),
        };
    }

    private static Process Start(string path)
    {
        try
        {
            return Process.Start(new ProcessStartInfo("flac", ["-d", "-s", "-c", path]) { RedirectStandardOutput = true })!;
        }
        catch (Win32Exception e)
        {
            throw new ScoringException("The program flac is missing. On Debian: apt install flac", e);
        }
    }
}
