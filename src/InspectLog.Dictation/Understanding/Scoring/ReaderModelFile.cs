using System.Buffers.Binary;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>Reads and writes what was learned. Four tables of weights (choices, wholes, talk, doubt), each a count, the keys in
/// rising order and the weights in steps; the words met; the two thresholds. All numbers are little-endian.</summary>
internal static class ReaderModelFile
{
    private const uint Mark = 0x3152_4C49; // "ILR1"
    private const float Steps = 1024;
    private const int LeastSteps = 10; // what weighs less is left out: many features, and hardly a reading changes

    /// <summary>The bytes of a file.</summary>
    public static byte[] Write(IReadOnlyList<IReadOnlyDictionary<uint, double>> tables, IEnumerable<int> words, double plainReading, double plainOther)
    {
        using var bytes = new MemoryStream();
        using var to = new BinaryWriter(bytes);
        to.Write(Mark);
        foreach (var table in tables)
        {
            var steps = table.Select(weight => (weight.Key, Step: (short)Math.Clamp(Math.Round(weight.Value * Steps), short.MinValue, short.MaxValue)))
                .Where(weight => Math.Abs(weight.Step) >= LeastSteps).OrderBy(weight => weight.Key).ToList();
            to.Write(steps.Count);
            steps.ForEach(weight => to.Write(weight.Key));
            steps.ForEach(weight => to.Write(weight.Step));
        }

        var sorted = words.Distinct().Order().ToList();
        to.Write(sorted.Count);
        sorted.ForEach(to.Write);
        to.Write((float)plainReading);
        to.Write((float)plainOther);
        to.Flush();
        return bytes.ToArray();
    }

    /// <summary>What a file holds.</summary>
    /// <exception cref="InvalidDataException">It is no such file, or is cut short.</exception>
    public static ReaderModel Read(ReadOnlySpan<byte> file)
    {
        var at = 0;
        if (Number(file, ref at) != unchecked((int)Mark))
        {
            throw new InvalidDataException("The weights of the reader are of another format.");
        }

        var tables = new WeightTable[4];
        for (var table = 0; table < tables.Length; table++)
        {
            tables[table] = Table(file, ref at);
        }

        var words = new HashSet<int>();
        for (var left = Number(file, ref at); left > 0; left--)
        {
            words.Add(Number(file, ref at));
        }

        return new()
        {
            Choices = tables[0],
            Wholes = tables[1],
            Talk = tables[2],
            Doubt = tables[3],
            Words = words,
            PlainReading = BitConverter.Int32BitsToSingle(Number(file, ref at)),
            PlainOther = BitConverter.Int32BitsToSingle(Number(file, ref at)),
        };
    }

    private static WeightTable Table(ReadOnlySpan<byte> file, ref int at)
    {
        var count = Number(file, ref at);
        var weights = new KeyValuePair<uint, float>[count];
        for (var one = 0; one < count; one++)
        {
            var step = BinaryPrimitives.ReadInt16LittleEndian(Part(file, at + count * 4 + one * 2, 2));
            weights[one] = new(BinaryPrimitives.ReadUInt32LittleEndian(Part(file, at + one * 4, 4)), step / Steps);
        }

        at += count * 6;
        return new(weights);
    }

    private static int Number(ReadOnlySpan<byte> file, ref int at)
    {
        var number = BinaryPrimitives.ReadInt32LittleEndian(Part(file, at, 4));
        at += 4;
        return number;
    }

    private static ReadOnlySpan<byte> Part(ReadOnlySpan<byte> file, int at, int length) => at >= 0 && at <= file.Length - length
        ? file.Slice(at, length)
        : throw new InvalidDataException("The weights of the reader are cut short.");
}
