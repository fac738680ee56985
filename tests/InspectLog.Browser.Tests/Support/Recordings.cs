using System.Buffers.Binary;
using System.Diagnostics;
using InspectLog.Dictation.Hearing;

namespace InspectLog.Browser.Tests.Support;

/// <summary>The spoken sentences of the corpus, and spoken commands, as a microphone would hear them.</summary>
internal static class Recordings
{
    /// <summary>Silence before the words: a page needs a moment to listen once the microphone is on.</summary>
    private static readonly TimeSpan Before = TimeSpan.FromSeconds(2);

    private static readonly TimeSpan After = TimeSpan.FromSeconds(1);

    /// <summary>Writes one sentence, with silence around it, as a WAV file into a folder.</summary>
    public static Task<Sound> SpeakAsync(string sentence, string folder) => SpeakAsync([sentence], After, folder);

    /// <summary>Writes sentences and commands, with silence before, between and after them, as a WAV file into a
    /// folder.</summary>
    /// <param name="said">Numbers of sentences of the corpus, and names of spoken commands.</param>
    /// <param name="pause">The silence after each.</param>
    /// <param name="folder">Where to.</param>
    public static async Task<Sound> SpeakAsync(IReadOnlyList<string> said, TimeSpan pause, string folder)
    {
        var samples = new List<float>(Silence(Before));
        foreach (var one in said)
        {
            samples.AddRange((await WordsAsync(one, folder)).Samples.Span);
            samples.AddRange(Silence(pause));
        }

        var heard = new PcmAudio((float[])[.. samples]);
        var wav = Path.Combine(folder, "microphone.wav");
        await File.WriteAllBytesAsync(wav, WavFile.Write(heard), TestContext.Current.CancellationToken);
        return new Sound(wav, heard.Duration);
    }

    /// <summary>Writes silence as a WAV file into a folder. Of any length: the program itself writes none above ten
    /// minutes, so a long one gets more samples and the header that goes with them.</summary>
    public static Sound BeSilent(TimeSpan length, string folder)
    {
        const int headerLength = 44;
        var path = Path.Combine(folder, "silence.wav");
        var file = WavFile.Write(new PcmAudio(new float[PcmAudio.SampleRate]));
        var dataLength = (int)(length.TotalSeconds * PcmAudio.SampleRate) * sizeof(short);
        Array.Resize(ref file, headerLength + dataLength);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(4), file.Length - 8);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(headerLength - 4), dataLength);
        File.WriteAllBytes(path, file);
        return new Sound(path, length);
    }

    private static async Task<PcmAudio> WordsAsync(string said, string folder)
    {
        var command = Path.Combine(AppContext.BaseDirectory, "Commands", $"{said}.flac");
        var source = File.Exists(command) ? command : Path.Combine(AppContext.BaseDirectory, "corpus", "spoken", $"{said}.flac");
        var wav = Path.Combine(folder, $"{said}.wav");
        using var flac = Process.Start("flac", ["--decode", "--silent", "--force", "--output-name", wav, source]);
        await flac.WaitForExitAsync(TestContext.Current.CancellationToken);
        return Assert.IsType<WavResult.Ok>(WavFile.Read(await File.ReadAllBytesAsync(wav, TestContext.Current.CancellationToken))).Audio;
    }

    private static float[] Silence(TimeSpan length) => new float[(int)(length.TotalSeconds * PcmAudio.SampleRate)];
}

/// <summary>A WAV file and how long it plays.</summary>
internal sealed record Sound(string Path, TimeSpan Length);
