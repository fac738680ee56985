using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using InspectLog.App.Commands;
using InspectLog.Journal.Storage;

// Numbers and dates print the same on every machine, whatever its language.
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
Console.InputEncoding = Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);

// What the program writes, journals, photos and keys, is its user's alone.
OwnerOnly.FromNowOn();

// Many people end a program by closing its window: that stops it as Ctrl+C does, in good order.
using var windowClosed = new CancellationTokenSource();
using var hangUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, context =>
{
    context.Cancel = true;
    windowClosed.Cancel();
});

return await CommandLine.RunAsync(args, Surroundings.OfProcess(), windowClosed.Token);
