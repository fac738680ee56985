namespace InspectLog.Paper.Layout;

/// <summary>A block with its lines broken for a width: how much room it takes is known, and not yet where it stands.</summary>
internal abstract class Part
{
    /// <summary>Least space above it, points.</summary>
    public virtual double Above { get; init; }

    /// <summary>How high it is where it is not parted, points.</summary>
    public abstract double Height { get; }

    /// <summary>How much of it has to stand together at its beginning, points.</summary>
    public virtual double First => Height;

    /// <summary>Whether it stays on the page of what follows.</summary>
    public virtual bool KeepsNext => false;

    /// <summary>Puts it where the flow is.</summary>
    /// <param name="flow">The flow.</param>
    /// <param name="x">Its left side.</param>
    public abstract void Put(Flow flow, double x);
}

/// <summary>Parts one below the other.</summary>
internal sealed class StackPart(IReadOnlyList<Part> parts) : Part
{
    public override double Above => Math.Max(base.Above, parts.Count > 0 ? parts[0].Above : 0);

    public override double Height { get; } = parts.Sum(part => part.Height) + parts.Skip(1).Sum(part => part.Above);

    public override double First => Need(0);

    /// <summary>Whether all of it stands on one page, as far as it has room on one.</summary>
    public bool IsKeptTogether { get; init; }

    public override void Put(Flow flow, double x)
    {
        if (IsKeptTogether && Height <= Flow.Height)
        {
            flow.Room(Height);
        }

        for (var one = 0; one < parts.Count; one++)
        {
            var gap = one == 0 ? 0 : parts[one].Above;
            flow.Room(gap + Need(one));
            flow.Skip(gap);
            parts[one].Put(flow, x);
        }
    }

    private double Need(int one) => one >= parts.Count ? 0
        : IsKeptTogether && one == 0 && Height <= Flow.Height ? Height
        : parts[one].KeepsNext && one + 1 < parts.Count ? parts[one].Height + parts[one + 1].Above + Need(one + 1)
        : parts[one].First;
}
