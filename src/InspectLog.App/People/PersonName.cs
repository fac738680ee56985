using InspectLog.App.Forms;

namespace InspectLog.App.People;

/// <summary>What a name of a person may be.</summary>
public static class PersonName
{
    /// <summary>Longest name taken.</summary>
    public const int Longest = 80;

    /// <summary>What is wrong with a name, and what to do; null where nothing is.</summary>
    /// <param name="name">The name.</param>
    /// <param name="isOwn">Whether whoever types it is the person.</param>
    public static string? Problem(string name, bool isOwn = true) =>
        name.Length == 0 ? isOwn ? "Type your name." : "Type the person's name."
        : name.Length > Longest ? $"Keep the name to {Longest} characters."
        : name.Any(char.IsControl) || PlainText.Of(name) != name ? "The name holds signs that no keyboard types. Type it again."
        : !name.Any(char.IsLetterOrDigit) ? "A name has at least one letter."
        : null;
}
