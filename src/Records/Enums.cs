using System.Text.Json.Serialization;
using Records.Values;

namespace Records;

/// <summary>What the visit was for.</summary>
[JsonConverter(typeof(ExactEnumConverter<JobType>))]
public enum JobType
{
    /// <summary>A service, usually yearly.</summary>
    AnnualService,

    /// <summary>The landlord's safety check.</summary>
    LandlordCheck,

    /// <summary>A repair.</summary>
    Repair,

    /// <summary>A new or moved boiler put into use.</summary>
    Commissioning,
}

/// <summary>Whose law applies, by ISO 3166-2.</summary>
[JsonConverter(typeof(ExactEnumConverter<Jurisdiction>))]
public enum Jurisdiction
{
    /// <summary>England.</summary>
    [JsonStringEnumMemberName("GB-ENG")]
    England,

    /// <summary>Wales.</summary>
    [JsonStringEnumMemberName("GB-WLS")]
    Wales,

    /// <summary>Scotland.</summary>
    [JsonStringEnumMemberName("GB-SCT")]
    Scotland,
}

/// <summary>How the premises are held.</summary>
[JsonConverter(typeof(ExactEnumConverter<PremisesUse>))]
public enum PremisesUse
{
    /// <summary>By the owner.</summary>
    OwnerOccupied,

    /// <summary>By a tenant.</summary>
    Rented,

    /// <summary>As a place of work.</summary>
    Workplace,
}

/// <summary>The room in which the appliance stands.</summary>
[JsonConverter(typeof(ExactEnumConverter<Room>))]
public enum Room
{
    /// <summary>A kitchen.</summary>
    Kitchen,

    /// <summary>A utility room.</summary>
    Utility,

    /// <summary>A hall.</summary>
    Hall,

    /// <summary>A landing.</summary>
    Landing,

    /// <summary>A living room.</summary>
    LivingRoom,

    /// <summary>A bedroom.</summary>
    Bedroom,

    /// <summary>A bath or shower room.</summary>
    Bathroom,

    /// <summary>A loft.</summary>
    Loft,

    /// <summary>A garage.</summary>
    Garage,

    /// <summary>A plant room.</summary>
    PlantRoom,

    /// <summary>Outdoors.</summary>
    Outside,

    /// <summary>Another room.</summary>
    Other,
}

/// <summary>The gas burnt.</summary>
[JsonConverter(typeof(ExactEnumConverter<Fuel>))]
public enum Fuel
{
    /// <summary>Natural gas.</summary>
    NaturalGas,

    /// <summary>Propane.</summary>
    Propane,

    /// <summary>Butane.</summary>
    Butane,
}

/// <summary>Kind of work that a category covers.</summary>
[JsonConverter(typeof(ExactEnumConverter<CategoryScope>))]
public enum CategoryScope
{
    /// <summary>Domestic work.</summary>
    Domestic,

    /// <summary>Non-domestic work.</summary>
    NonDomestic,
}

/// <summary>How products leave and air comes in.</summary>
[JsonConverter(typeof(ExactEnumConverter<FlueType>))]
public enum FlueType
{
    /// <summary>Room-sealed with a fan.</summary>
    RoomSealedFanned,

    /// <summary>Room-sealed by natural draught.</summary>
    RoomSealedNatural,

    /// <summary>Open-flued by natural draught.</summary>
    OpenFlued,

    /// <summary>Open-flued with a fan.</summary>
    OpenFluedFanned,
}

/// <summary>Pressure in the case against the room.</summary>
[JsonConverter(typeof(ExactEnumConverter<CasePressure>))]
public enum CasePressure
{
    /// <summary>Above the room.</summary>
    Positive,

    /// <summary>Below the room.</summary>
    Negative,
}

/// <summary>Which calorific value a heat input counts.</summary>
[JsonConverter(typeof(ExactEnumConverter<InputBasis>))]
public enum InputBasis
{
    /// <summary>The net one.</summary>
    Net,

    /// <summary>The gross one.</summary>
    Gross,
}

/// <summary>Metal of the heat exchanger.</summary>
[JsonConverter(typeof(ExactEnumConverter<HeatExchangerMaterial>))]
public enum HeatExchangerMaterial
{
    /// <summary>Aluminium.</summary>
    Aluminium,

    /// <summary>Stainless steel.</summary>
    StainlessSteel,

    /// <summary>Copper.</summary>
    Copper,

    /// <summary>Cast iron.</summary>
    CastIron,
}

/// <summary>How the appliance was left.</summary>
[JsonConverter(typeof(ExactEnumConverter<StateOnLeaving>))]
public enum StateOnLeaving
{
    /// <summary>In use.</summary>
    InUse,

    /// <summary>Turned off.</summary>
    TurnedOff,

    /// <summary>Disconnected from the gas.</summary>
    Disconnected,
}

/// <summary>What an instrument measures.</summary>
[JsonConverter(typeof(ExactEnumConverter<InstrumentKind>))]
public enum InstrumentKind
{
    /// <summary>Flue gas.</summary>
    FlueGasAnalyser,

    /// <summary>Pressure.</summary>
    PressureGauge,

    /// <summary>Electrical values.</summary>
    Multimeter,

    /// <summary>Temperature.</summary>
    Thermometer,
}

/// <summary>Rate at which a reading was taken.</summary>
[JsonConverter(typeof(ExactEnumConverter<FiringRate>))]
public enum FiringRate
{
    /// <summary>Maximum rate.</summary>
    Maximum,

    /// <summary>Minimum rate.</summary>
    Minimum,
}

/// <summary>Before or after the work.</summary>
[JsonConverter(typeof(ExactEnumConverter<WorkStage>))]
public enum WorkStage
{
    /// <summary>As found.</summary>
    BeforeWork,

    /// <summary>As left.</summary>
    AfterWork,
}

/// <summary>Kind of gas meter.</summary>
[JsonConverter(typeof(ExactEnumConverter<MeterKind>))]
public enum MeterKind
{
    /// <summary>No meter in the tested section.</summary>
    None,

    /// <summary>Diaphragm meter U6 (G4).</summary>
    DiaphragmU6,

    /// <summary>Diaphragm meter U16 (G10).</summary>
    DiaphragmU16,

    /// <summary>Ultrasonic meter E6.</summary>
    UltrasonicE6,

    /// <summary>Another meter.</summary>
    Other,
}

/// <summary>Kind of pressure gauge.</summary>
[JsonConverter(typeof(ExactEnumConverter<PressureGaugeKind>))]
public enum PressureGaugeKind
{
    /// <summary>Water gauge.</summary>
    Water,

    /// <summary>Electronic gauge.</summary>
    Electronic,
}

/// <summary>Where a joint is.</summary>
[JsonConverter(typeof(ExactEnumConverter<JointPlace>))]
public enum JointPlace
{
    /// <summary>Inlet of the gas valve.</summary>
    GasValveInlet,

    /// <summary>Outlet of the gas valve.</summary>
    GasValveOutlet,

    /// <summary>Burner door.</summary>
    BurnerDoor,

    /// <summary>Top plate.</summary>
    TopPlate,

    /// <summary>Fan.</summary>
    Fan,

    /// <summary>Electrode.</summary>
    Electrode,

    /// <summary>Flue collector.</summary>
    FlueCollector,

    /// <summary>Condensate trap.</summary>
    CondensateTrap,

    /// <summary>Elsewhere.</summary>
    Other,
}

/// <summary>Kind of seal.</summary>
[JsonConverter(typeof(ExactEnumConverter<JointSeal>))]
public enum JointSeal
{
    /// <summary>Washer.</summary>
    Washer,

    /// <summary>O-ring.</summary>
    ORing,

    /// <summary>Gasket.</summary>
    Gasket,

    /// <summary>Rope.</summary>
    Rope,

    /// <summary>No seal.</summary>
    None,
}

/// <summary>Condition of the seal put back.</summary>
[JsonConverter(typeof(ExactEnumConverter<SealCondition>))]
public enum SealCondition
{
    /// <summary>Good.</summary>
    Good,

    /// <summary>Damaged.</summary>
    Damaged,

    /// <summary>Not known.</summary>
    Unknown,
}

/// <summary>How a joint was checked for leaks.</summary>
[JsonConverter(typeof(ExactEnumConverter<LeakCheckMethod>))]
public enum LeakCheckMethod
{
    /// <summary>Leak-detection fluid.</summary>
    Fluid,

    /// <summary>Gas detector.</summary>
    Detector,
}

/// <summary>Deposits on the heat exchanger.</summary>
[JsonConverter(typeof(ExactEnumConverter<Deposits>))]
public enum Deposits
{
    /// <summary>None.</summary>
    None,

    /// <summary>Light.</summary>
    Light,

    /// <summary>Heavy.</summary>
    Heavy,
}

/// <summary>How the heat exchanger was cleaned.</summary>
[JsonConverter(typeof(ExactEnumConverter<CleaningMethod>))]
public enum CleaningMethod
{
    /// <summary>Brush.</summary>
    Brush,

    /// <summary>Scraper.</summary>
    Scraper,

    /// <summary>Vacuum.</summary>
    Vacuum,

    /// <summary>Water rinse.</summary>
    Rinse,

    /// <summary>Acid cleaner.</summary>
    AcidCleaner,

    /// <summary>Another way.</summary>
    Other,
}

/// <summary>Condition of the burner.</summary>
[JsonConverter(typeof(ExactEnumConverter<BurnerCondition>))]
public enum BurnerCondition
{
    /// <summary>Good.</summary>
    Good,

    /// <summary>Damaged.</summary>
    Damaged,
}

/// <summary>State of the pressure relief valve.</summary>
[JsonConverter(typeof(ExactEnumConverter<ReliefValveState>))]
public enum ReliefValveState
{
    /// <summary>In order.</summary>
    Ok,

    /// <summary>Lets water by.</summary>
    Passing,

    /// <summary>Blocked.</summary>
    Blocked,

    /// <summary>Removed.</summary>
    Removed,
}

/// <summary>How the seal of the case was checked.</summary>
[JsonConverter(typeof(ExactEnumConverter<CaseSealMethod>))]
public enum CaseSealMethod
{
    /// <summary>By touch and smoke.</summary>
    TouchAndSmoke,

    /// <summary>By a flame.</summary>
    Flame,

    /// <summary>Another way.</summary>
    Other,
}

/// <summary>What a terminal clearance leads to.</summary>
[JsonConverter(typeof(ExactEnumConverter<ClearanceTo>))]
public enum ClearanceTo
{
    /// <summary>Terminal below an opening.</summary>
    BelowOpening,

    /// <summary>Terminal above an opening.</summary>
    AboveOpening,

    /// <summary>Terminal beside an opening.</summary>
    BesideOpening,

    /// <summary>Terminal below a gutter or pipe.</summary>
    BelowGutter,

    /// <summary>Terminal below eaves.</summary>
    BelowEaves,

    /// <summary>Terminal below a balcony or car-port roof.</summary>
    BelowBalcony,

    /// <summary>A vertical drain or soil pipe.</summary>
    VerticalPipe,

    /// <summary>A corner.</summary>
    Corner,

    /// <summary>A boundary alongside.</summary>
    BoundaryAlongside,

    /// <summary>Ground, roof or balcony below.</summary>
    Ground,

    /// <summary>A surface or boundary opposite.</summary>
    FacingSurface,

    /// <summary>A terminal opposite.</summary>
    FacingTerminal,

    /// <summary>An opening in a car port.</summary>
    CarportOpening,

    /// <summary>A terminal above or below.</summary>
    VerticalTerminal,

    /// <summary>A terminal beside.</summary>
    HorizontalTerminal,
}

/// <summary>Where vents lead.</summary>
[JsonConverter(typeof(ExactEnumConverter<VentilationOpensTo>))]
public enum VentilationOpensTo
{
    /// <summary>Outdoors.</summary>
    Outside,

    /// <summary>Into a room.</summary>
    Room,
}

/// <summary>What a safety device guards.</summary>
[JsonConverter(typeof(ExactEnumConverter<SafetyDeviceKind>))]
public enum SafetyDeviceKind
{
    /// <summary>Flame supervision.</summary>
    FlameSupervision,

    /// <summary>Overheat thermostat.</summary>
    OverheatThermostat,

    /// <summary>Proof of air pressure.</summary>
    AirPressureProving,

    /// <summary>Blocked condensate.</summary>
    CondensateBlockage,

    /// <summary>Another device.</summary>
    Other,
}

/// <summary>The engineer's class of a defect.</summary>
[JsonConverter(typeof(ExactEnumConverter<DefectClass>))]
public enum DefectClass
{
    /// <summary>Immediately dangerous.</summary>
    ImmediatelyDangerous,

    /// <summary>At risk.</summary>
    AtRisk,

    /// <summary>Another class.</summary>
    Other,
}

/// <summary>What brought a defect about.</summary>
[JsonConverter(typeof(ExactEnumConverter<DefectCause>))]
public enum DefectCause
{
    /// <summary>Design.</summary>
    Design,

    /// <summary>Construction.</summary>
    Construction,

    /// <summary>Manner of installation.</summary>
    Installation,

    /// <summary>Modification.</summary>
    Modification,

    /// <summary>Servicing.</summary>
    Servicing,

    /// <summary>Wear.</summary>
    Wear,

    /// <summary>Another cause.</summary>
    Other,
}

/// <summary>How a defect could do harm.</summary>
[JsonConverter(typeof(ExactEnumConverter<DefectMechanism>))]
public enum DefectMechanism
{
    /// <summary>A leak of gas.</summary>
    GasLeak,

    /// <summary>Incomplete combustion.</summary>
    IncompleteCombustion,

    /// <summary>Products not removed.</summary>
    ProductsNotRemoved,

    /// <summary>Another way.</summary>
    Other,
}

/// <summary>What was done about a defect.</summary>
[JsonConverter(typeof(ExactEnumConverter<DefectAction>))]
public enum DefectAction
{
    /// <summary>Put right.</summary>
    Rectified,

    /// <summary>Disconnected from the gas.</summary>
    Disconnected,

    /// <summary>Turned off.</summary>
    TurnedOff,

    /// <summary>Nothing.</summary>
    None,
}

/// <summary>Whether the responsible person let the engineer act.</summary>
[JsonConverter(typeof(ExactEnumConverter<Consent>))]
public enum Consent
{
    /// <summary>Given.</summary>
    Given,

    /// <summary>Refused.</summary>
    Refused,

    /// <summary>Nobody was there to ask.</summary>
    NobodyPresent,
}

/// <summary>Whether a defect is reportable.</summary>
[JsonConverter(typeof(ExactEnumConverter<ReportDecision>))]
public enum ReportDecision
{
    /// <summary>Reportable.</summary>
    Yes,

    /// <summary>Not reportable.</summary>
    No,

    /// <summary>Not yet decided.</summary>
    Undecided,
}

/// <summary>What had gone wrong with a record that another one replaces.</summary>
[JsonConverter(typeof(ExactEnumConverter<SupersedesReason>))]
public enum SupersedesReason
{
    /// <summary>It was measured or looked at again, later than the earlier record ended.</summary>
    MeasuredAgain,

    /// <summary>Something was written down wrongly or left out.</summary>
    Mistyped,

    /// <summary>An instrument was at fault.</summary>
    InstrumentFault,

    /// <summary>It was recorded of the wrong appliance. A danger or an open question of the earlier record stands for the appliance named there.</summary>
    WrongAppliance,
}
