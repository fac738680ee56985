namespace InspectLog.Journal.Record;

/// <summary>Who makes an entry, and with what.</summary>
/// <param name="Name">A person's name, or <see cref="JournalEntry.Program"/>.</param>
/// <param name="Device">Name of the paired device it is made with; null for the workshop's own computer and for the
/// program itself.</param>
public readonly record struct Author(string Name, string? Device = null)
{
    /// <summary>Somebody at the workshop's own computer, or the program.</summary>
    public static implicit operator Author(string name) => FromString(name);

    /// <summary>Somebody at the workshop's own computer, or the program.</summary>
    public static Author FromString(string name) => new(name);
}
