using System.Reflection;
using System.Runtime.CompilerServices;

namespace NotebookKit.Tests.House;

/// <summary>Designs and results can't change behind anybody's back.</summary>
public class ImmutabilityTests
{
    private static IEnumerable<Type> PublicTypes => Repository.Library.GetExportedTypes().Where(t => !t.Name.EndsWith("Builder",
        StringComparison.Ordinal));

    [Fact]
    public void No_public_property_can_be_set_after_construction() =>
        Violations.None(
            from type in PublicTypes
            from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static |
                BindingFlags.DeclaredOnly)
            where property.SetMethod is { IsPublic: true } setter && !IsInit(setter)
            select $"{type.FullName}.{property.Name}");

    [Fact]
    public void No_public_field_can_be_written() =>
        Violations.None(
            from type in PublicTypes
            where !type.IsEnum
            from field in type.GetFields(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
            where !field.IsInitOnly && !field.IsLiteral
            select $"{type.FullName}.{field.Name}");

    [Fact]
    public void No_static_field_can_be_written() =>
        Violations.None(
            from type in Repository.Library.GetTypes()
            where !type.IsDefined(typeof(CompilerGeneratedAttribute), false) && !type.Name.StartsWith('<')
            from field in type.GetFields(BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
            where !field.IsInitOnly && !field.IsLiteral && !field.Name.StartsWith('<')
            select $"{type.FullName}.{field.Name}");

    [Fact]
    public void No_public_property_hands_out_an_array_or_a_list_that_can_be_changed() =>
        Violations.None(
            from type in PublicTypes
            from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static |
                BindingFlags.DeclaredOnly)
            let kind = property.PropertyType
            where kind.IsArray || (kind.IsGenericType && (kind.GetGenericTypeDefinition() == typeof(List<>)
                || kind.GetGenericTypeDefinition() == typeof(Dictionary<,>)))
            select $"{type.FullName}.{property.Name}");

    [Fact]
    public void Public_classes_are_sealed_abstract_or_static() =>
        Violations.None(PublicTypes.Where(t => t is { IsClass: true, IsSealed: false, IsAbstract: false }).Select(t => t.FullName));

    private static bool IsInit(MethodInfo setter) =>
        setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));
}
