using InspectLog.Journal.Entries;

namespace InspectLog.App.Access;

/// <summary>Who a request comes from.</summary>
/// <param name="Role">What they may do.</param>
/// <param name="Person">Whose device it is; null at the workshop's own computer, where each says who they are.</param>
/// <param name="Device">What the device is called; null at the workshop's own computer.</param>
/// <param name="Access">Number of the access; null at the workshop's own computer.</param>
/// <param name="Vehicle">The one vehicle they may see; null for all.</param>
/// <param name="Inspection">The one inspection they may see; null for all of the vehicle.</param>
public sealed record Caller(AccessRole Role, string? Person, string? Device, long? Access, string? Vehicle, long? Inspection)
{
    /// <summary>Whoever sits at the workshop's own computer.</summary>
    public static readonly Caller AtTheWorkshop = new(AccessRole.Owner, null, null, null, null, null);

    /// <summary>Who a request comes from; null for a stranger.</summary>
    public static Caller? Of(HttpContext context) => context.Features.Get<Caller>();

    /// <summary>Who an access was given to.</summary>
    public static Caller With(Journal.State.Access access) => new(
        access.Given.Role, access.Given.Person, access.Given.Device, access.Number, access.Given.Vehicle, access.Given.Inspection);

    /// <summary>Whether they may do something, whichever vehicle it is about.</summary>
    public bool May(string policy) => Policies.Roles[policy].Contains(Role);
}
