using System.Globalization;
using InspectLog.Photos.Developing;
using InspectLog.Photos.Tests.Support;
using InspectLog.Photos.Worker;

namespace InspectLog.Photos.Tests.Worker;

/// <summary>Photos damaged at random, through the intake and a real worker.</summary>
public sealed class IntakeFuzzTests(ITestOutputHelper output)
{
    /// <summary>How many files; more by hand: <c>INSPECTLOG_PHOTO_FUZZ=100000</c>.</summary>
    private static readonly int Files =
        int.TryParse(Environment.GetEnvironmentVariable("INSPECTLOG_PHOTO_FUZZ"), CultureInfo.InvariantCulture, out var files) ? files : 400;

    private static readonly PhotoBounds Strict = PhotoBounds.Usual with
    {
        Processor = TimeSpan.FromSeconds(2), ProcessorPerMegapixel = TimeSpan.Zero, Wait = 60, Memory = 400_000_000, MemoryPerPixel = 0, Turn = TimeSpan.FromHours(1),
    };

    private static readonly byte[][] Seeds =
    [
        Pictures.PhoneJpeg(6, 160, 120), Pictures.PhonePng(6, 160, 120), SampleFiles.Read("progressive.jpg"), SampleFiles.Read("restarts.jpg"),
        SampleFiles.Read("grey.jpg"),
    ];

    [Fact]
    public async Task No_damaged_photo_ends_a_worker_or_takes_long_or_much_memory()
    {
        using var workers = TestPhotoWorkers.Start(2, bounds: Strict, command: TestPhotoWorkers.Command("real-photos"));
        var (taken, shown) = (0, 0);

        await Parallel.ForEachAsync(
            Enumerable.Range(0, Files),
            new ParallelOptions { MaxDegreeOfParallelism = 2, CancellationToken = TestContext.Current.CancellationToken },
            async (number, stop) =>
            {
                var file = Damage(number);
                if (PhotoIntake.Examine(file) is not PhotoResult.Ok(var facts) || (long)facts.Width * facts.Height > 4_000_000)
                    return;
                Interlocked.Increment(ref taken);
                var answer = await workers.DevelopAsync(PhotoWork.Copies, file, facts, stop);
                if (answer is PhotoAnswer.Copies)
                    Interlocked.Increment(ref shown);
                else
                    Assert.True(answer.Fault() == PhotoFault.Damaged, $"File {number}: {answer}");
            });

        output.WriteLine($"{Files} files, {taken} taken, {shown} shown, {workers.Started} workers");
        Assert.InRange(workers.Started, 1, 2);
        Assert.InRange(taken, Files / 10, Files);
    }

    /// <summary>One to six edits: a byte set, put in or left out, a stretch doubled, zeroed or moved. Half of the PNGs get their
    /// checksums put right, so that the decoder itself meets the bytes.</summary>
    private static byte[] Damage(int number)
    {
        var random = new Random(number);
        var file = Seeds[random.Next(Seeds.Length)].ToArray();
        var isPng = file[0] == 0x89;
        for (var edits = random.Next(1, 7); edits > 0; edits--)
            file = Edit(file, random);
        return isPng && random.Next(4) > 0 ? WithRightChecksums(file) : file;
    }

    private static byte[] Edit(byte[] file, Random random)
    {
        // The first bytes say what it is; a file that is no photo is refused by them alone.
        var at = random.Next(Math.Min(20, file.Length - 1), file.Length);
        var length = Math.Min(random.Next(1, 64), file.Length - at);
        switch (random.Next(6))
        {
            case 0:
                return [.. file[..at], (byte)random.Next(256), .. file[at..]];
            case 1:
                return [.. file[..at], .. file[(at + 1)..]];
            case 2:
                return [.. file[..(at + length)], .. file[at..]];
            case 3:
                file.AsSpan(at, length).Clear();
                return file;
            default:
                file[at] = (byte)random.Next(256);
                return file;
        }
    }

    private static byte[] WithRightChecksums(byte[] file)
    {
        for (var at = 8; at + 12 <= file.Length;)
        {
            var length = System.Buffers.Binary.BinaryPrimitives.ReadUInt32BigEndian(file.AsSpan(at));
            if (length > file.Length - at - 12)
                break;
            var crc = PngChunks.Crc(file.AsSpan(at + 4, 4 + (int)length));
            System.Buffers.Binary.BinaryPrimitives.WriteUInt32BigEndian(file.AsSpan(at + 8 + (int)length), crc);
            at += 12 + (int)length;
        }

        return file;
    }
}
