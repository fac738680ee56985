using System.Reflection;
using System.Text;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>How English words are pronounced, from the CMU Pronouncing Dictionary that comes with the program. The file
/// stays as bytes; only where each word stands in it is kept beside them.</summary>
internal sealed class PronouncingDictionary
{
    private const string Resource = "cmudict-en-us.dict";

    private static readonly Lazy<PronouncingDictionary> OfProgram = new(Load);

    private readonly byte[] _file;
    private readonly Dictionary<string, int> _lines;

    private PronouncingDictionary(byte[] file)
    {
        _file = file;
        _lines = new(150_000, StringComparer.Ordinal);
        for (var start = 0; start < file.Length; start = LineEnd(start) + 1)
        {
            _lines.TryAdd(WordAt(start), start);
        }
    }

    /// <summary>The dictionary that comes with the program, read at the first use.</summary>
    public static PronouncingDictionary Shipped => OfProgram.Value;

    /// <summary>Every spelling in the dictionary; further pronunciations of a word as "word(2)".</summary>
    public IEnumerable<string> Words => _lines.Keys;

    /// <summary>The pronunciations of a word in lower case, the usual one first; none where it is not known.</summary>
    public IReadOnlyList<Phone[]> Find(string word)
    {
        var found = new List<Phone[]>();
        for (var variant = 1; _lines.TryGetValue(variant == 1 ? word : $"{word}({variant})", out var line); variant++)
        {
            found.Add(PhonesAt(line));
        }

        return found;
    }

    private string WordAt(int start) => Encoding.ASCII.GetString(_file.AsSpan(start, _file.AsSpan(start).IndexOf((byte)' ')));

    private Phone[] PhonesAt(int start)
    {
        var line = Encoding.ASCII.GetString(_file.AsSpan(start, LineEnd(start) - start));
        return Phones.Parse(line[(line.IndexOf(' ', StringComparison.Ordinal) + 1)..]);
    }

    private int LineEnd(int start) => _file.AsSpan(start).IndexOf((byte)'\n') is >= 0 and var length ? start + length : _file.Length;

    private static PronouncingDictionary Load()
    {
        using var resource = Assembly.GetExecutingAssembly().GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is not embedded.");
        using var bytes = new MemoryStream();
        resource.CopyTo(bytes);
        return new(bytes.ToArray());
    }
}
