using System.Collections.Concurrent;
using System.Text;
using System.Text.Json;

namespace InspectLog.Journal.Verification;

/// <summary>Names that stand on every line of a journal: each is held once. Safe for use by many threads.</summary>
internal sealed class EntryNames
{
    // There are few. A journal that is nothing but new names is read all the same, and holds no more than these.
    private const int Most = 10_000;

    private readonly ConcurrentDictionary<string, string> _names = new(StringComparer.Ordinal);
    private int _held;

    /// <summary>A name as it stands between the quotes of a string.</summary>
    public string Of(ReadOnlySpan<byte> spelled)
    {
        var text = Encoding.UTF8.GetString(spelled);
        return Of(text.Contains('\\', StringComparison.Ordinal) ? JsonSerializer.Deserialize<string>($"\"{text}\"")! : text);
    }

    /// <summary>The one string for a name.</summary>
    public string Of(string name)
    {
        if (_names.TryGetValue(name, out var held))
        {
            return held;
        }

        return Volatile.Read(ref _held) < Most && Interlocked.Increment(ref _held) <= Most ? _names.GetOrAdd(name, name) : name;
    }
}
