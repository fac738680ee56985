using System.Text.RegularExpressions;

namespace InspectLog.Journal.Tests.Support;

/// <summary>One call of the system that a process makes on its first thread.</summary>
/// <param name="Name">Such as <c>fsync</c>.</param>
/// <param name="Nth">Its number among the calls of that name, from 1.</param>
internal sealed record SystemCall(string Name, int Nth);

/// <summary>Reads what strace wrote.</summary>
internal static partial class SystemCalls
{
    /// <summary>The calls that touch a folder, in order.</summary>
    public static IReadOnlyList<SystemCall> On(string folder, IEnumerable<string> trace)
    {
        var counts = new Dictionary<string, int>();
        var found = new List<SystemCall>();
        foreach (var line in trace)
        {
            if (Call().Match(line) is { Success: true } call)
            {
                var name = call.Groups[1].Value;
                counts[name] = counts.GetValueOrDefault(name) + 1;
                if (line.Contains(folder, StringComparison.Ordinal))
                {
                    found.Add(new(name, counts[name]));
                }
            }
        }

        return found;
    }

    [GeneratedRegex(@"^(\w+)\(")]
    private static partial Regex Call();
}
