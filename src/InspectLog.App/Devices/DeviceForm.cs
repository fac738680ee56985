using InspectLog.App.Forms;
using InspectLog.App.People;
using InspectLog.Journal;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Devices;

/// <summary>Reads the form that invites a device.</summary>
internal static class DeviceForm
{
    /// <summary>Roles a device can have; a viewer gets a link instead.</summary>
    public static IReadOnlyList<AccessRole> Offered { get; } =
        [AccessRole.Technician, AccessRole.Student, AccessRole.Instructor, AccessRole.Owner];

    /// <summary>The invitation; null where the form was refused. Fields: person, device, role, vehicle.</summary>
    public static Invitation? Read(PostedForm form, Garage garage)
    {
        var person = form.Text("person");
        if (PersonName.Problem(person, isOwn: false) is { } problem)
        {
            form.Refuse("person", problem);
        }

        var device = form.Text("device") is { Length: > 0 } named ? named : $"{person}’s phone";
        if (form.Text("device").Length > 0 && PersonName.Problem(device) is not null)
        {
            form.Refuse("device", $"Give it a short name of letters and digits, at most {PersonName.Longest} characters, or leave it empty.");
        }

        if (RoleOf(form.Text("role")) is not { } role)
        {
            form.Refuse("role", "Choose what this person may do.");
            return null;
        }

        var vehicle = form.Text("vehicle") is { Length: > 0 } id ? id : null;
        if (role == AccessRole.Student && vehicle is null)
        {
            form.Refuse("vehicle", "Choose the vehicle the student works on. Students see no other.");
        }
        else if (vehicle is not null && garage.FindVehicle(vehicle) is null)
        {
            form.Refuse("vehicle", "There is no such vehicle. Choose one of the list.");
        }

        return form.IsValid ? new Invitation(person, device, role, role == AccessRole.Student ? vehicle : null) : null;
    }

    private static AccessRole? RoleOf(string word) => Offered.Where(role => RoleWords.Of(role) == word).Select(role => (AccessRole?)role).FirstOrDefault();
}
