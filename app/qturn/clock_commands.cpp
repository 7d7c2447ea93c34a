#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/names.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/sort_reply.h"
#include "app/qturn/to_json.h"

namespace quarterturn {
namespace {

struct ClockOptions {
    std::string device;
    std::optional<std::string> shift;
    std::string wrong;
    std::string right;
};

std::string shift_text(std::chrono::seconds shift) {
    const std::chrono::hh_mm_ss clock{shift < shift.zero() ? -shift : shift};
    const auto two = [](auto count) {
        const std::string digits = std::to_string(count.count());
        return digits.size() < 2 ? '0' + digits : digits;
    };
    return (shift < shift.zero() ? "-" : "+") + two(clock.hours()) + ':' + two(clock.minutes()) +
           ':' + two(clock.seconds());
}

nlohmann::json shift_json(const ClockShift& shift, const Names& names) {
    return {{"device", names.device(shift.device)},
            {"device_id", shift.device.value},
            {"shift", shift_text(shift.shift)},
            {"shift_seconds", shift.shift.count()},
            {"because", shift.because}};
}

Reply propose(Session& session) {
    const Names names(session.library());
    Reply reply{{}, {{"proposals", nlohmann::json::array()}}};
    for (const ClockShift& shift : propose_clock_shifts(session.library())) {
        reply.outcome = Outcome::needs_attention;
        reply.data["proposals"].push_back(shift_json(shift, names));
        reply.lines.push_back(names.device(shift.device) + ": shift its photos by " +
                              shift_text(shift.shift) + ". " + shift.because);
        reply.lines.push_back("To do so: qturn clock apply " +
                              number_text(shift.device.value).substr(1));
    }
    if (reply.lines.empty()) reply.lines.emplace_back("No clock looks wrong.");
    return reply;
}

Reply applied(Session& session, const ClockShift& shift) {
    Library& library = session.library();
    Reply reply = sort_reply(library, apply_clock_shift(library, shift));
    const Names names(library);
    reply.data["applied"] = shift_json(shift, names);
    reply.lines.insert(reply.lines.begin(),
                       names.device(shift.device) + ": its photos' times are now " +
                           shift_text(shift.shift) +
                           " from the file's own. To take it back: qturn undo");
    return reply;
}

ClockShift proposed_for(Library& library, const Device& device) {
    for (const ClockShift& shift : propose_clock_shifts(library)) {
        if (shift.device == device.id) return shift;
    }
    throw WrongUse("Nothing says how far the clock of " + device_name(device) +
                   " is off. Name it with --shift, or two photos of the same moment with: "
                   "qturn clock pair");
}

Reply decline(Session& session, const ClockOptions& options) {
    Library& library = session.library();
    const Device device = find_device(library, options.device);
    const ClockShift shift = proposed_for(library, device);
    library.history().record("left the clock of " + device_name(device) + " as it is",
                             [&] { decline_clock_shift(library, shift); });
    return {{"The clock of " + device_name(device) + " stays as it is; a shift of " +
             shift_text(shift.shift) + " is proposed no more."},
            {{"declined", shift_json(shift, Names(library))}}};
}

Reply apply(Session& session, const ClockOptions& options) {
    const Device device = find_device(session.library(), options.device);
    if (!options.shift) return applied(session, proposed_for(session.library(), device));
    return applied(session, {device.id, shift_from(*options.shift), "You said so."});
}

Reply apply_pair(Session& session, const ClockOptions& options) {
    Library& library = session.library();
    const Photo wrong = find_photo(library, options.wrong);
    const Photo right = find_photo(library, options.right);
    if (wrong.id == right.id) {
        throw WrongUse("Both are the same photo. Name one from each device.");
    }
    return applied(session, clock_shift_from_pair(library, wrong.id, right.id));
}

Reply list_devices(Session& session) {
    const auto devices = session.library().devices().all();
    std::vector<std::vector<std::string>> rows;
    for (const Device& device : devices) {
        rows.push_back({number_text(device.id.value), device_name(device),
                        device.serial.empty() ? "" : "serial " + device.serial,
                        device.clock_shift == device.clock_shift.zero()
                            ? "clock as it is"
                            : "clock shifted by " + shift_text(device.clock_shift)});
    }
    if (devices.empty()) rows.push_back({"No devices yet; photos bring them."});
    return {columns(rows), {{"devices", list_json(devices)}}};
}

}  // namespace

void add_clock_commands(CommandSet& commands) {
    commands.add({"devices", "Lists the cameras and phones the photos came from.", "qturn devices"},
                 list_devices);

    commands.group("clock", "Devices whose clock is off.");
    const auto options = std::make_shared<ClockOptions>();
    commands.add({"clock propose", "Says which devices' clocks look wrong, and by how much.",
                  "qturn clock propose"},
                 propose);

    auto apply_command = commands.add(
        {"clock apply",
         "Shifts a device's photos and sorts again; the files' own times are kept beside.",
         "qturn clock apply 2 --shift +00:47"},
        [options](Session& session) { return apply(session, *options); });
    apply_command.argument("DEVICE", options->device, "Name or number");
    apply_command.option("--shift ±HH:MM[:SS]", options->shift,
                         "What to add to the file's time; else as proposed");

    auto decline_command =
        commands.add({"clock decline", "Leaves a device's clock as it is, and proposes no more.",
                      "qturn clock decline 2"},
                     [options](Session& session) { return decline(session, *options); });
    decline_command.argument("DEVICE", options->device, "Name or number");

    auto pair_command = commands.add(
        {"clock pair", "Shifts a device by two photos of the same moment, one from each device.",
         "qturn clock pair CAM_0007.jpg IMG_0012.jpg"},
        [options](Session& session) { return apply_pair(session, *options); });
    pair_command.argument("WRONG", options->wrong, "The photo whose clock is off");
    pair_command.argument("RIGHT", options->right, "The photo whose clock is right");
}

}  // namespace quarterturn
