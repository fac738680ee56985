namespace InspectLog.Journal.Entries;

/// <summary>What somebody who comes over the network may do. What each may is decided by the program, not here.</summary>
public enum AccessRole
{
    /// <summary>Runs the workshop: as if sitting at its computer.</summary>
    Owner,

    /// <summary>Inspects, and keeps vehicles, parts and instruments.</summary>
    Technician,

    /// <summary>Looks at everything and adds remarks of their own; changes no record of others.</summary>
    Instructor,

    /// <summary>Inspects one vehicle, and sees no other.</summary>
    Student,

    /// <summary>Looks at the report of one inspection, until a day.</summary>
    Viewer,
}

/// <summary>A device was paired, or a link to a report was given away. Written to the workshop's journal; its sequence is
/// the number of the access.</summary>
/// <param name="Person">Who it is for.</param>
/// <param name="Device">What the device, or the link, is called.</param>
/// <param name="Role">What they may do.</param>
/// <param name="TokenSha256">SHA-256 of the random token (256 bits) that it shows at each visit, lower-case hex. The token
/// itself is kept nowhere here.</param>
[EntryKind("access-given")]
public sealed record AccessGiven(string Person, string Device, AccessRole Role, string TokenSha256) : EntryBody
{
    /// <summary>The one vehicle it is for; null for all.</summary>
    public string? Vehicle { get; init; }

    /// <summary>The one inspection of that vehicle it is for; null for all of them.</summary>
    public long? Inspection { get; init; }

    /// <summary>When it ends, UTC; null for not by itself.</summary>
    public DateTimeOffset? Until { get; init; }
}

/// <summary>A device or a link no longer opens anything. Written to the workshop's journal.</summary>
/// <param name="Access">Its number.</param>
[EntryKind("access-withdrawn")]
public sealed record AccessWithdrawn(long Access) : EntryBody;
