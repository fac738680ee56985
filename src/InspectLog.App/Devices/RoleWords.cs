using InspectLog.Journal.Entries;

namespace InspectLog.App.Devices;

/// <summary>What roles are called, and what they mean.</summary>
internal static class RoleWords
{
    public static string Of(AccessRole role) => role switch
    {
        AccessRole.Owner => "owner",
        AccessRole.Technician => "technician",
        AccessRole.Instructor => "instructor",
        AccessRole.Student => "student",
        _ => "viewer",
    };

    public static string Meaning(AccessRole role) => role switch
    {
        AccessRole.Owner => "as at this computer, devices too",
        AccessRole.Technician => "inspects, and keeps vehicles and instruments",
        AccessRole.Instructor => "looks at everything, adds remarks",
        AccessRole.Student => "inspects one vehicle and sees no other",
        _ => "reads one report",
    };
}
