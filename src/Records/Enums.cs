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

/// <summary>What the job was, more closely than its type.</summary>
[JsonConverter(typeof(ExactEnumConverter<WorkKind>))]
public enum WorkKind
{
    /// <summary>The flue was moved.</summary>
    FlueRelocation,

    /// <summary>A gas escape was attended.</summary>
    Escape,

    /// <summary>The appliance was removed for good.</summary>
    Removal,

    /// <summary>An appliance that had been disconnected was put back.</summary>
    Reconnection,

    /// <summary>Work on the meter.</summary>
    MeterWork,

    /// <summary>Work on the gas pipework.</summary>
    Pipework,

    /// <summary>A fault was looked for.</summary>
    Diagnosis,
}

/// <summary>How far the work went.</summary>
[JsonConverter(typeof(ExactEnumConverter<WorkResult>))]
public enum WorkResult
{
    /// <summary>All of it was done.</summary>
    CarriedOut,

    /// <summary>Part of it was done.</summary>
    PartlyCarriedOut,

    /// <summary>The premises could not be entered.</summary>
    NoAccess,

    /// <summary>The appliance could not be reached.</summary>
    NoAccessToAppliance,

    /// <summary>The work was refused.</summary>
    Refused,

    /// <summary>There was no gas.</summary>
    GasOff,

    /// <summary>A part has to be got.</summary>
    AwaitingParts,

    /// <summary>It was stopped because of a danger.</summary>
    StoppedForDanger,
}

/// <summary>What was worked on.</summary>
[JsonConverter(typeof(ExactEnumConverter<TouchedPart>))]
public enum TouchedPart
{
    /// <summary>The way of the gas through the appliance.</summary>
    GasPath,

    /// <summary>The combustion circuit.</summary>
    CombustionCircuit,

    /// <summary>The water side.</summary>
    WaterSide,

    /// <summary>Condensate trap and pipe.</summary>
    CondensatePath,

    /// <summary>The electrics.</summary>
    Electrics,

    /// <summary>The controls.</summary>
    Controls,

    /// <summary>The flue.</summary>
    Flue,

    /// <summary>The air supply.</summary>
    Ventilation,

    /// <summary>The gas pipework.</summary>
    Pipework,
}

/// <summary>Why something was not looked at or measured.</summary>
[JsonConverter(typeof(ExactEnumConverter<NotDoneReason>))]
public enum NotDoneReason
{
    /// <summary>There is no meter.</summary>
    NoMeter,

    /// <summary>The meter cannot be reached.</summary>
    MeterNotReachable,

    /// <summary>The display of the meter shows nothing.</summary>
    DisplayDead,

    /// <summary>There is no test point.</summary>
    NoTestPoint,

    /// <summary>It is not fitted.</summary>
    NotFitted,

    /// <summary>It cannot be reached.</summary>
    NotReachable,

    /// <summary>The appliance cannot be run.</summary>
    ApplianceCannotRun,

    /// <summary>The appliance was left off.</summary>
    ApplianceLeftOff,

    /// <summary>The maker's instructions do not want it.</summary>
    MakerSaysNotNeeded,

    /// <summary>The customer refused.</summary>
    CustomerRefused,

    /// <summary>There was no instrument.</summary>
    NoInstrument,

    /// <summary>It was unsafe to do.</summary>
    UnsafeToDo,

    /// <summary>Another reason.</summary>
    Other,
}

/// <summary>Why a value is taken back.</summary>
[JsonConverter(typeof(ExactEnumConverter<WithdrawalReason>))]
public enum WithdrawalReason
{
    /// <summary>It was written down wrongly.</summary>
    Mistyped,

    /// <summary>It was recorded of the wrong appliance.</summary>
    WrongAppliance,

    /// <summary>The instrument was at fault.</summary>
    InstrumentFault,
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

/// <summary>Kind of boiler.</summary>
[JsonConverter(typeof(ExactEnumConverter<ApplianceKind>))]
public enum ApplianceKind
{
    /// <summary>A combination boiler, which heats water for the taps as well.</summary>
    Combi,

    /// <summary>A system boiler, with pump and vessel inside.</summary>
    System,

    /// <summary>A heat-only boiler.</summary>
    HeatOnly,

    /// <summary>A back boiler behind a fire.</summary>
    BackBoiler,
}

/// <summary>How the burner gets its air and gas.</summary>
[JsonConverter(typeof(ExactEnumConverter<BurnerKind>))]
public enum BurnerKind
{
    /// <summary>Air and gas are mixed before the fan or in it.</summary>
    Premix,

    /// <summary>A fan blows the air to the burner, or draws it.</summary>
    FanToBurner,

    /// <summary>The burner draws its air by itself.</summary>
    Atmospheric,
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

/// <summary>Why the appliance was not left in use.</summary>
[JsonConverter(typeof(ExactEnumConverter<LeftOffReason>))]
public enum LeftOffReason
{
    /// <summary>A danger.</summary>
    Danger,

    /// <summary>There is no gas.</summary>
    NoGas,

    /// <summary>A part has to be got.</summary>
    AwaitingParts,

    /// <summary>The customer wants it so.</summary>
    CustomerWish,

    /// <summary>The premises stand empty.</summary>
    Void,

    /// <summary>Another reason.</summary>
    Other,
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

/// <summary>How the pressure at the appliance was read.</summary>
[JsonConverter(typeof(ExactEnumConverter<PressureReadBy>))]
public enum PressureReadBy
{
    /// <summary>At a test nipple.</summary>
    Nipple,

    /// <summary>By the maker's own procedure.</summary>
    MakersProcedure,
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

    /// <summary>Union of the meter.</summary>
    MeterUnion,

    /// <summary>Isolation valve of the appliance.</summary>
    IsolationValve,

    /// <summary>Installation pipework.</summary>
    Pipework,

    /// <summary>Pressure test nipple.</summary>
    TestNipple,

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

/// <summary>How the heating system takes up expansion.</summary>
[JsonConverter(typeof(ExactEnumConverter<WaterSystemType>))]
public enum WaterSystemType
{
    /// <summary>Sealed, with a vessel.</summary>
    Sealed,

    /// <summary>Open-vented, with a cistern.</summary>
    OpenVented,
}

/// <summary>What the flue is made of.</summary>
[JsonConverter(typeof(ExactEnumConverter<FlueMaterial>))]
public enum FlueMaterial
{
    /// <summary>Metal.</summary>
    Metal,

    /// <summary>Plastic.</summary>
    Plastic,
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

/// <summary>Kind of part.</summary>
[JsonConverter(typeof(ExactEnumConverter<PartKind>))]
public enum PartKind
{
    /// <summary>Gas valve.</summary>
    GasValve,

    /// <summary>Injector.</summary>
    Injector,

    /// <summary>Burner.</summary>
    Burner,

    /// <summary>Fan.</summary>
    Fan,

    /// <summary>Heat exchanger of the fire side; one for hot water is a water part.</summary>
    HeatExchanger,

    /// <summary>Electrode.</summary>
    Electrode,

    /// <summary>Thermocouple.</summary>
    Thermocouple,

    /// <summary>Seal of a joint that carries gas.</summary>
    GasSeal,

    /// <summary>Seal of the combustion circuit.</summary>
    CombustionSeal,

    /// <summary>Sensor.</summary>
    Sensor,

    /// <summary>Control board.</summary>
    ControlBoard,

    /// <summary>Pump.</summary>
    Pump,

    /// <summary>Expansion vessel.</summary>
    ExpansionVessel,

    /// <summary>Pressure relief valve.</summary>
    ReliefValve,

    /// <summary>Condensate trap.</summary>
    CondensateTrap,

    /// <summary>Part of the flue.</summary>
    FlueComponent,

    /// <summary>Gas pressure regulator.</summary>
    Regulator,

    /// <summary>Gas meter.</summary>
    Meter,

    /// <summary>Gas pipework.</summary>
    Pipework,

    /// <summary>Another part of the water side.</summary>
    WaterPart,

    /// <summary>Another part.</summary>
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

/// <summary>Whose defect it is.</summary>
[JsonConverter(typeof(ExactEnumConverter<DefectConcern>))]
public enum DefectConcern
{
    /// <summary>Of this appliance.</summary>
    ThisAppliance,

    /// <summary>Of another appliance.</summary>
    OtherAppliance,

    /// <summary>Of the gas supply.</summary>
    Supply,
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

/// <summary>Where gas or current was shut off.</summary>
[JsonConverter(typeof(ExactEnumConverter<IsolationPoint>))]
public enum IsolationPoint
{
    /// <summary>At the valve of the appliance.</summary>
    ApplianceValve,

    /// <summary>At both ends of a section of pipe.</summary>
    PipeSection,

    /// <summary>At the emergency control.</summary>
    EmergencyControl,

    /// <summary>At the meter.</summary>
    Meter,

    /// <summary>At the electrical supply.</summary>
    ElectricalSupply,

    /// <summary>At the other appliances as well as at this one.</summary>
    OtherAppliances,

    /// <summary>Nowhere.</summary>
    NotIsolated,
}

/// <summary>Who was told.</summary>
[JsonConverter(typeof(ExactEnumConverter<ToldParty>))]
public enum ToldParty
{
    /// <summary>The responsible person.</summary>
    ResponsiblePerson,

    /// <summary>The owner.</summary>
    Owner,

    /// <summary>The landlord or the agent.</summary>
    LandlordOrAgent,

    /// <summary>The gas supplier.</summary>
    Supplier,

    /// <summary>The gas transporter.</summary>
    Transporter,

    /// <summary>The manager of the building.</summary>
    BuildingManager,

    /// <summary>The other occupiers.</summary>
    OtherOccupiers,

    /// <summary>The gas emergency service.</summary>
    EmergencyService,
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
