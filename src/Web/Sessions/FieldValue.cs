using Nookwright.Flow;
using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Web.Sessions;

/// <summary>What a written size comes to, for showing it beside the field.</summary>
public static class FieldValue
{
    /// <summary>The number a text comes to with the workbook's names, or null for an empty text or one that cannot be worked out.</summary>
    public static Traced? Of(Workbook workbook, string text, string fieldPath)
    {
        Outcome<Traced> Look(string name) =>
            workbook.BuiltIn.Sizes.TryGetValue(name, out var size) ? size
            : workbook.Room.Sizes.TryGetValue(name, out var ofRoom) ? ofRoom
            : new Refusal($"{name} has no value.");
        return
            text.Length > 0
            && Formula.Read(text, fieldPath).Take(out var formula, out _)
            && formula.EvaluateLength(Look, workbook.Project.Units).Take(out var value, out _)
            ? value
            : null;
    }

    /// <summary>True for a text that is more than a length, so that what it comes to says something new.</summary>
    public static bool IsWorkedOut(string text, LengthUnit bare) => !LengthText.Read(text, bare).Ok;
}
