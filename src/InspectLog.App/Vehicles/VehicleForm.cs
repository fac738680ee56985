using InspectLog.App.Forms;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Vehicles;

/// <summary>Reads the fields that describe a vehicle: name, description, cylinders, firingOrder, rotation; owner,
/// contact, vin.</summary>
public static class VehicleForm
{
    private const int MostCylinders = 12;

    private static readonly string[] PrivateFields = ["owner", "contact", "vin"];

    public static VehicleDescribed? Description(PostedForm form)
    {
        var name = form.Required("name", "Give the vehicle a name, so that you can find it again.");
        var description = form.Text("description");
        var engine = Engine(form);
        return form.IsValid ? new VehicleDescribed(name, description, engine) : null;
    }

    /// <summary>Private facts to be noted; null when they are as they were. A form that was emptied empties them; one that
    /// has no such fields leaves them alone.</summary>
    /// <param name="form">The form.</param>
    /// <param name="known">What was noted last; null when nothing was, or it was emptied or withheld.</param>
    public static PrivateFactsNoted? PrivateFacts(PostedForm form, PrivateFactsNoted? known)
    {
        var facts = new PrivateFactsNoted(form.Text("owner"), form.Text("contact"), form.Text("vin"));
        var before = known ?? new PrivateFactsNoted("", "", "");
        return facts == before || !PrivateFields.Any(form.Has) ? null : facts;
    }

    private static EngineLayout? Engine(PostedForm form)
    {
        var cylinders = form.Whole("cylinders", "Type the number of cylinders, such as 6.");
        if (cylinders is < 1 or > MostCylinders)
        {
            form.Refuse("cylinders", $"Type a number of cylinders from 1 to {MostCylinders}.");
        }

        var order = FiringOrder(form, cylinders);
        var rotation = form.Choice("rotation", RotorRotation.Unknown, "Choose from the list which way the rotor turns.");
        return cylinders is { } count ? new EngineLayout(count, order, rotation) : null;
    }

    /// <summary>A firing order names each cylinder once: "1-5-3-6-2-4".</summary>
    private static IReadOnlyList<int> FiringOrder(PostedForm form, int? cylinders)
    {
        var text = form.Text("firingOrder");
        if (text.Length == 0)
        {
            return [];
        }

        try
        {
            var order = Checks.Routing.FiringOrder.Parse(text);
            if (cylinders is null || !order.Order().SequenceEqual(Enumerable.Range(1, cylinders.Value)))
            {
                form.Refuse(
                    "firingOrder", "Name each cylinder once, such as 1-5-3-6-2-4, and give the number of cylinders.");
            }

            return order;
        }
        catch (ArgumentException problem)
        {
            form.Refuse("firingOrder", problem.Message);
            return [];
        }
    }
}
