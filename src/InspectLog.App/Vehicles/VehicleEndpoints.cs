using InspectLog.App.Forms;
using InspectLog.App.Media;
using InspectLog.App.Ui;
using InspectLog.Checks;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Photos;

namespace InspectLog.App.Vehicles;

/// <summary>Vehicles: adding, showing and describing them, and starting an inspection.</summary>
public static class VehicleEndpoints
{
    public static void MapVehicles(this IEndpointRouteBuilder app)
    {
        app.MapGet(Links.NewVehicle, NewForm).WithName("new-vehicle");
        app.MapPost(Links.NewVehicle, Add).WithName("add-vehicle");
        var vehicle = app.MapGroup("/vehicles/{vehicle}");
        vehicle.MapGet("/", Show).WithName("vehicle");
        vehicle.MapGet("/describe", DescribeForm).WithName("describe-form");
        vehicle.MapPost("/describe", Describe).WithName("describe");
        vehicle.MapPost("/picture", Picture)
            .WithName("picture")
            .WithMetadata(new RequestSizeLimit(PhotoIntake.LargestFile));
        vehicle.MapGet("/journal", Journal).WithName("journal");
        vehicle.MapPost("/inspections", Start).WithName("start-inspection");
    }

    private static IResult NewForm(Garage garage) => Form(garage, null, null);

    private static async Task<IResult> Add(HttpContext context, Garage garage)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        if (VehicleForm.Description(form) is not { } described)
        {
            return Form(garage, null, form.Refused("vehicle"));
        }

        var added = new VehicleAdded(described.Name, described.Description, described.Engine);
        var id = garage.AddVehicle(
            Technician.Of(context), added, VehicleForm.PrivateFacts(form) is { } facts ? [facts] : []);
        return Results.Redirect(Links.Vehicle(id));
    }

    private static IResult Show(HttpContext context, Garage garage, TimeProvider time, string vehicle, string? by) =>
        garage.FindVehicle(vehicle) is { } state
            ? Page.Of<VehiclePage, VehicleView>(
                VehicleViewBuilder.Build(state, time.GetLocalNow(), by, Technician.Of(context), null, garage.Problems))
            : Results.NotFound();

    private static IResult DescribeForm(Garage garage, string vehicle) =>
        garage.FindVehicle(vehicle) is null ? Results.NotFound() : Form(garage, vehicle, null);

    private static async Task<IResult> Describe(HttpContext context, Garage garage, string vehicle)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        if (VehicleForm.Description(form) is not { } described)
        {
            return garage.FindVehicle(vehicle) is null
                ? Results.NotFound()
                : Form(garage, vehicle, form.Refused("vehicle"));
        }

        var facts = VehicleForm.PrivateFacts(form);
        garage.Append(vehicle, Technician.Of(context), now => facts is null || facts == now.Private
            ? [described]
            : [described, facts]);
        return Results.Redirect(Links.Vehicle(vehicle));
    }

    private static async Task<IResult> Picture(HttpContext context, Garage garage, string vehicle)
    {
        if (garage.FindVehicle(vehicle) is null)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        if (form.Files.Count == 0)
        {
            form.Refuse("photo", "Choose a picture first.");
            return Form(garage, vehicle, form.Refused("picture"));
        }

        var bytes = await Body.ReadAsync(form.Files[0], PhotoIntake.LargestFile, context.RequestAborted);
        if (PhotoIntake.Examine(bytes) is not PhotoResult.Ok { Facts: var facts })
        {
            form.Refuse("photo", ((PhotoResult.Refused)PhotoIntake.Examine(bytes)).Message);
            return Form(garage, vehicle, form.Refused("picture"));
        }

        var media = garage.Media.Keep(bytes, MediaTypes.Of(facts.Format));
        garage.Append(vehicle, Technician.Of(context), _ => [new VehiclePictured(media)]);
        return Results.Redirect(Links.Vehicle(vehicle));
    }

    private static IResult Journal(Garage garage, string vehicle, string? upto) => garage.FindVehicle(vehicle) is { } state
        ? Page.Of<JournalPage, JournalView>(JournalView.Of(state, garage.Entries(vehicle), upto, garage.Problems))
        : Results.NotFound();

    private static async Task<IResult> Start(HttpContext context, Garage garage, TimeProvider time, string vehicle)
    {
        if (garage.FindVehicle(vehicle) is not { } state)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var technician = form.Text("technician") is { Length: > 0 } name ? name : Technician.Of(context);
        var odometer = OdometerFields.Reading(form, "odometer");
        var sheet = BuiltInSheets.Find(form.Text("sheet") is { Length: > 0 } id ? id : BuiltInSheets.IgnitionBreakerless6);
        if (sheet is null)
        {
            form.Refuse("sheet", "Choose a sheet from the list.");
        }

        if (!form.IsValid)
        {
            return Page.Of<VehiclePage, VehicleView>(
                VehicleViewBuilder.Build(state, time.GetLocalNow(), null, technician, form.Refused("start"), garage.Problems),
                StatusCodes.Status422UnprocessableEntity);
        }

        var unit = odometer is null ? null : OdometerFields.Unit(form, "odometerUnit");
        var after = garage.Append(vehicle, technician, now => now.OpenInspection is null
            ? [new InspectionStarted(sheet!.Id, sheet.Version, sheet.Sha256, technician, odometer, unit) { Rule = sheet.Rule.Id }]
            : []);
        Technician.Remember(context, technician);
        return Results.Redirect(Links.Inspection(vehicle, after.OpenInspection!.Number));
    }

    private static IResult Form(Garage garage, string? vehicle, RefusedForm? refused) =>
        Page.Of<VehicleFormPage, VehicleFormView>(
            new VehicleFormView(vehicle is null ? null : garage.FindVehicle(vehicle), refused, garage.Problems),
            refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
