using System.Globalization;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>A command line's option that takes a whole number from 1.</summary>
internal static class CountOption
{
    /// <summary>The number behind the option; another where the option is not there.</summary>
    /// <param name="arguments">The command line.</param>
    /// <param name="name">The option, with its dashes.</param>
    /// <param name="otherwise">What counts without it.</param>
    /// <exception cref="ScoringException">What follows the option is no whole number from 1, or nothing follows.</exception>
    public static int Read(string[] arguments, string name, int otherwise)
    {
        var at = Array.IndexOf(arguments, name);
        if (at < 0)
        {
            return otherwise;
        }

        var given = at + 1 < arguments.Length ? arguments[at + 1] : null;
        return int.TryParse(given, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1
            ? number
            : throw new ScoringException(
                $"{name} takes a whole number from 1 to {int.MaxValue}, as in {name} 8; {(given is null ? "none was given" : $"not \"{given}\"")}.");
    }
}
