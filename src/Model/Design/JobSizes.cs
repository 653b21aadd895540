using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;
using Nookwright.Survey;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>The names of a job that belong to no piece: the room's, the sheets', named sizes, and readings of what is built.</summary>
internal static class JobSizes
{
    /// <summary>Names them all.</summary>
    public static void Name(Job job, Room room)
    {
        foreach (var (name, size) in room.Sizes)
            job.Names.Define(name, size);
        foreach (var sheet in job.Project.Shop.Sheets)
            job.Names.Define($"{sheet.Id}.thickness", sizes => Thickness(sizes, sheet));
        foreach (var size in job.Project.Sizes)
            job.Names.DefineWritten(size.Name, $"sizes/{size.Name}/size", size.Size);
        foreach (var reading in job.Project.Readings)
            job.Names.Define(reading.Name, sizes => Reading(sizes, reading));
    }

    /// <summary>Why named sizes and readings have no number, whether a piece uses them or not.</summary>
    public static IEnumerable<(string About, Refusal Why)> Troubles(Job job) =>
        from name in job
            .Project.Sizes.Select(size => size.Name)
            .Concat(job.Project.Readings.Select(reading => reading.Name))
        let outcome = job.Names.Look(name)
        where !outcome.Ok
        select (name, outcome.Refusal);

    /// <summary>As measured; the thickness it is sold as while nobody has measured it.</summary>
    private static Traced Thickness(Wanted sizes, SheetGood sheet) =>
        sheet.Measured is { } measured
            ? sizes.Size($"shop/sheets/{sheet.Id}/measured", measured)
            : sizes.Size($"shop/sheets/{sheet.Id}/nominal", sheet.Nominal);

    private static Traced Reading(Wanted sizes, BuiltReading reading)
    {
        var field = $"readings/{reading.Name}";
        if (reading.Taken is { } taken)
            return Traced.Read(
                sizes.Written($"{field}/taken", taken).Length,
                reading.Name,
                reading.Date,
                isTaken: true
            );
        var planned = sizes.Written($"{field}/planned", reading.Planned);
        return Traced.Read(planned.Length, reading.Name, taken: null, isTaken: false, planned);
    }
}
