#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class SmallTables : public testing::Test, public ExampleLibrary {};

Device device_of(const std::string& make, const std::string& model, const std::string& serial) {
    Device device;
    device.make = make;
    device.model = model;
    device.serial = serial;
    return device;
}

TEST_F(SmallTables, TellDevicesApartByAllTheirWords) {
    DeviceTable devices = library.devices();
    const DeviceId first = devices.find_or_add(device_of("Brackwell", "C70", "0001"));
    EXPECT_EQ(devices.find_or_add(device_of("Brackwell", "C70", "0001")), first);
    EXPECT_NE(devices.find_or_add(device_of("Brackwell", "C70", "0002")), first);
    EXPECT_NE(devices.find_or_add(device_of("Brackwell", "C70", "")), first);
    EXPECT_EQ(devices.all().size(), 4U);
    reopen();
    EXPECT_EQ(library.devices().find(first)->serial, "0001");
    EXPECT_EQ(library.devices().find(DeviceId{77}), std::nullopt);
}

TEST_F(SmallTables, KeepADevicesShiftWhenItIsSeenAgain) {
    library.history().apply({"shifted", {}, {{phone, std::chrono::minutes{47}}}});
    EXPECT_EQ(library.devices().find_or_add(device_of("Larkmoor", "P3", "")), phone);
    EXPECT_EQ(library.devices().find(phone)->clock_shift, std::chrono::minutes{47});
}

TEST_F(SmallTables, RecallAFileOnlyAsItWas) {
    const Path source = "/media/card/\xff odd name.jpg";
    const FileState state{5'000'000'000, 1'762'510'323'610'000'001, true};
    library.seen().remember(source, state, sha256("a"));
    reopen();
    SeenTable seen = library.seen();
    EXPECT_EQ(seen.recall(source, state), sha256("a"));
    EXPECT_EQ(seen.recall("/media/card/other.jpg", state), std::nullopt);
    EXPECT_EQ(seen.recall(source, {state.bytes + 1, state.modified_ns, true}), std::nullopt);
    EXPECT_EQ(seen.recall(source, {state.bytes, state.modified_ns + 1, true}), std::nullopt);
    const FileState later{7, state.modified_ns + 9, true};
    seen.remember(source, later, sha256("b"));
    EXPECT_EQ(seen.recall(source, later), sha256("b"));
    EXPECT_EQ(seen.recall(source, state), std::nullopt);
}

TEST_F(SmallTables, KeepSettings) {
    EXPECT_EQ(library.settings().get("business line"), std::nullopt);
    library.settings().set("business line", "Hair by Ines — Köln");
    library.settings().set("business line", "Hair by Ines");
    library.settings().set("empty", "");
    reopen();
    EXPECT_EQ(library.settings().get("business line"), "Hair by Ines");
    EXPECT_EQ(library.settings().get("empty"), "");
    EXPECT_THROW(library.settings().set("business line", "\xff"), StoreError);
}

TEST_F(SmallTables, KeepTicksOfAKitForEachWedding) {
    using Ticks = std::map<std::string, std::int64_t>;
    Wedding other;
    other.name = "Other";
    other.date = parse_date("2027-01-01").value();
    const WeddingId second = library.weddings().add(other);
    library.kit_ticks().set(wedding, "grip", 12);
    library.kit_ticks().set(wedding, "grip", 15);
    library.kit_ticks().set(second, "grip", 3);
    library.kit_ticks().clear(wedding, "never ticked");
    reopen();
    EXPECT_EQ(library.kit_ticks().of_wedding(wedding), (Ticks{{"grip", 15}}));
    library.kit_ticks().clear(wedding, "grip");
    EXPECT_EQ(library.kit_ticks().of_wedding(wedding), Ticks{});
    EXPECT_EQ(library.kit_ticks().of_wedding(second), (Ticks{{"grip", 3}}));
    EXPECT_THROW(library.kit_ticks().set(WeddingId{99}, "grip", 1), StoreError);
}

}  // namespace
}  // namespace quarterturn
