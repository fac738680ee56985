using System.Collections.Frozen;
using InspectLog.Journal.Entries;
using Microsoft.AspNetCore.Authorization;
using static InspectLog.Journal.Entries.AccessRole;

namespace InspectLog.App.Access;

/// <summary>What can be allowed, and to whom. Every endpoint names one of these; where a role is tied to one vehicle or one
/// inspection, it may do so there alone (<see cref="ReachHandler"/>).</summary>
public static class Policies
{
    /// <summary>Pages that show nothing of any vehicle, and ways to one's own.</summary>
    public const string Visit = "visit";

    /// <summary>What lies across all vehicles: search, instruments, own words.</summary>
    public const string LookAtAll = "look-at-all";

    /// <summary>Pages of a vehicle.</summary>
    public const string Look = "look";

    /// <summary>The report of an inspection.</summary>
    public const string ReadReport = "read-report";

    /// <summary>Photos as pages show them, without where they were taken.</summary>
    public const string SeePhotos = "see-photos";

    /// <summary>Recordings, and photos as the camera made them.</summary>
    public const string HaveOriginals = "have-originals";

    /// <summary>Recording at the bench, and putting right what was recorded.</summary>
    public const string Record = "record";

    /// <summary>Adding a remark to a closed inspection.</summary>
    public const string Remark = "remark";

    /// <summary>Vehicles, limits, wear parts, instruments and own words.</summary>
    public const string Keep = "keep";

    /// <summary>Devices and links.</summary>
    public const string Run = "run";

    /// <summary>Each policy with the roles it allows.</summary>
    public static FrozenDictionary<string, FrozenSet<AccessRole>> Roles { get; } = new Dictionary<string, FrozenSet<AccessRole>>
    {
        [Visit] = [Owner, Technician, Instructor, Student, Viewer],
        [LookAtAll] = [Owner, Technician, Instructor],
        [Look] = [Owner, Technician, Instructor, Student],
        [ReadReport] = [Owner, Technician, Instructor, Student, Viewer],
        [SeePhotos] = [Owner, Technician, Instructor, Student, Viewer],
        [HaveOriginals] = [Owner, Technician, Instructor, Student],
        [Record] = [Owner, Technician, Student],
        [Remark] = [Owner, Technician, Instructor, Student],
        [Keep] = [Owner, Technician],
        [Run] = [Owner],
    }.ToFrozenDictionary();

    /// <summary>Registers them. What names none is for nobody unknown.</summary>
    public static void AddPolicies(this IServiceCollection services)
    {
        services.AddAuthentication(PairedDevices.Scheme).AddScheme<Microsoft.AspNetCore.Authentication.AuthenticationSchemeOptions, PairedDevices>(PairedDevices.Scheme, null);
        services.AddSingleton<IAuthorizationHandler, ReachHandler>();
        var builder = services.AddAuthorizationBuilder()
            .SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build());
        foreach (var (policy, roles) in Roles)
        {
            builder.AddPolicy(policy, one => one
                .RequireRole(roles.Select(role => role.ToString()))
                .AddRequirements(new WithinReach()));
        }
    }
}
