using System.Globalization;
using CsCheck;
using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

/// <summary>WAV files changed at random, and bytes that are none. <c>INSPECTLOG_FUZZ=1000000</c> for a long run of each.</summary>
public sealed class WavFileFuzzTests
{
    private static readonly long? Long = Environment.GetEnvironmentVariable("INSPECTLOG_FUZZ") is { } runs
        ? long.Parse(runs, CultureInfo.InvariantCulture)
        : null;

    private static readonly Gen<byte[]> Mutilated =
        Gen.Select(Gen.Short.Array[0, 60], Gen.Int[0, 200], Gen.Select(Gen.Int[0, 199], Gen.Byte).Array[0, 12]).Select((samples, length, changes) =>
        {
            var file = Wav.File(Wav.Format(), Wav.Chunk("LIST", [1, 2, 3]), Wav.Data(samples));
            foreach (var (at, value) in changes.Where(change => change.Item1 < file.Length))
                file[at] = value;
            return file[..Math.Min(length, file.Length)];
        });

    [Fact]
    public void Random_bytes_never_throw() =>
        Gen.Byte.Array[0, 300].Sample(file => WavFile.Read(file) is not null, iter: Long ?? 50_000);

    [Fact]
    public void Mutilated_file_never_throws_and_gives_no_more_samples_than_bytes() =>
        Mutilated.Sample(file => WavFile.Read(file) is not WavResult.Ok ok || ok.Audio.Samples.Length * 2 <= file.Length, iter: Long ?? 100_000);

    [Fact]
    public void Mutilated_file_never_makes_it_allocate_more_than_twice_the_file() =>
        Mutilated.Sample(
            file =>
            {
                var before = GC.GetAllocatedBytesForCurrentThread();
                _ = WavFile.Read(file);
                const int forTheMessage = 64_000;
                return GC.GetAllocatedBytesForCurrentThread() - before <= (2 * file.Length) + forTheMessage;
            },
            iter: Long ?? 20_000);

    [Fact]
    public void What_is_written_is_read() =>
        Gen.Short.Array[1, 1_000].Sample(samples =>
        {
            var audio = new PcmAudio(samples.Select(s => s / 32_768f).ToArray());
            return WavFile.Read(WavFile.Write(audio)) is WavResult.Ok ok && ok.Audio.Samples.Span.SequenceEqual(audio.Samples.Span);
        });
}
