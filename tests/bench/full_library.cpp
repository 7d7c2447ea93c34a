#include "tests/bench/full_library.h"

#include <array>
#include <random>

#include "indexer/disk/checksum.h"
#include "indexer/image/hair_look.h"
#include "indexer/looks/look_state.h"
#include "indexer/looks/pairs.h"
#include "indexer/store/hair_look_table.h"

namespace quarterturn {
namespace {

using std::chrono::days;
using std::chrono::hours;
using std::chrono::minutes;

constexpr std::array looks_of_client{3, 3, 2, 2};
constexpr std::array roles{"bride", "bridesmaid", "mother", "bridesmaid"};
constexpr std::array sides{Angle::left, Angle::front, Angle::right, Angle::back};
constexpr std::array further{Angle::crown, Angle::left_three_quarter, Angle::right_three_quarter,
                             Angle::detail};
constexpr int looks_of_a_wedding = 10;
constexpr int photos_of_a_sitting = photos_of_a_wedding / looks_of_a_wedding;
constexpr int weeks_ahead = 8;
constexpr std::array first_names{"Ada",    "Brisa",   "Corin", "Delphe", "Elowen",
                                 "Farrah", "Ginevra", "Hanne", "Isaura", "Junia",
                                 "Katla",  "Linnea",  "Maren"};
constexpr std::array last_names{"Lindqvist", "Okonjo", "Varga",  "Thorne",  "Castellan", "Ferreira",
                                "Haugen",    "Ibarra", "Jansky", "Marlowe", "Novak"};
constexpr std::array families{"Low bun", "High bun", "Half up", "Plait", "Soft waves"};
constexpr std::array colours{"black", "dark brown", "chestnut", "copper", "blonde, highlights"};
constexpr std::array textures{"straight, fine", "wavy", "curly, coarse"};
constexpr std::array pieces{"comb", "pearl pins", "flowers", "veil", "ribbon"};

class Years {
  public:
    Years(Library& library, int photos, Date today)
        : library_(library), wanted_(photos), today_(today) {}

    // The oldest first. The oldest wedding has fewer photos where they would be too many.
    void fill() {
        int weeks = 0;
        for (int photos = 0; photos < wanted_; ++weeks) {
            for (int trial = 0; trial < looks_of_a_wedding; ++trial) {
                if (is_past(trial_of(wedding_day(weeks), trial))) photos += photos_of_a_sitting;
            }
            surplus_ = photos - wanted_;
        }
        Transaction all(library_.database());
        while (weeks > 0) add_wedding(wedding_day(--weeks));
        all.commit();
    }

  private:
    template <class Words>
    std::string any(const Words& words) {
        return words[random_() % words.size()];
    }

    Date wedding_day(int weeks_before_the_last) const {
        return std::chrono::sys_days(today_) + days(7 * (weeks_ahead - weeks_before_the_last) - 3);
    }

    static LocalTime trial_of(Date wedding, int number) {
        return LocalTime(std::chrono::local_days(wedding) - days(66 - 4 * number)) + hours(10);
    }

    bool is_past(LocalTime sitting) const { return date_of(sitting) < today_; }

    void add_wedding(Date date) {
        Wedding wedding;
        wedding.name = "Wedding " + std::to_string(++weddings_);
        wedding.date = date;
        wedding.venue = any(last_names) + " barn";
        wedding.ready_by = "12:30";
        for (const char* role : roles) wedding.party.push_back({add_client(), role});
        wedding.id = library_.weddings().add(wedding);
        int trial = 0;
        for (std::size_t place = 0; place < roles.size(); ++place) {
            for (int number = 0; number < looks_of_client[place]; ++number) {
                add_look(wedding, wedding.party[place].client, number, trial_of(date, trial++));
            }
        }
    }

    ClientId add_client() {
        Client client;
        client.name = any(first_names) + " " + any(last_names) + " " + number_word(++clients_);
        if (clients_ % 5 == 0) client.note = "Likes it loose at the nape.";
        client.id = library_.clients().add(client);
        allow(client.id, Use::own_record);
        if (clients_ % 2 == 0) allow(client.id, Use::consultation);
        if (clients_ % 3 == 0) website_[client.id] = allow(client.id, Use::website);
        return client.id;
    }

    // A word that no other begins with: neither another client's nor a year.
    static std::string number_word(int number) {
        const std::string digits = std::to_string(number);
        return std::string(5 - digits.size(), '0') + digits;
    }

    ConsentId allow(ClientId client, Use use) {
        ConsentEntry entry;
        entry.client = client;
        entry.use = use;
        entry.said = ConsentSaid::granted;
        entry.said_on = Date(std::chrono::year(2004) / 1 / 1);
        entry.shown = ShownAs::with_her_face;
        entry.recorded_at = LocalTime(std::chrono::local_days(entry.said_on));
        return library_.consents().add(entry);
    }

    void add_look(const Wedding& wedding, ClientId client, int number, LocalTime starts) {
        Sitting sitting;
        sitting.client = client;
        sitting.wedding = wedding.id;
        sitting.starts = starts;
        sitting.ends = starts + hours(3);
        sitting.id = library_.sittings().add(sitting);
        Look look;
        look.client = client;
        look.wedding = wedding.id;
        look.name = any(families) + " " + std::to_string(++looks_);
        look.worn = number == 0 ? Worn::ceremony : Worn::evening;
        look.sittings = {sitting.id};
        look.id = library_.looks().add(look);
        library_.recipes().save(look.id, recipe(), sitting.ends);
        if (!is_past(starts)) return;
        if (surplus_ > 0) {
            surplus_ -= photos_of_a_sitting;
            return;
        }
        add_photos(look, sitting);
        if (wedding.date < today_ && looks_ % 5 != 0) {
            library_.sign_offs().add(
                {{}, look.id, sitting.ends, seal_of(look_state(library_, look.id)), {}, {}});
        }
    }

    Recipe recipe() {
        Recipe made;
        made.hair = "As it comes, washed the day before.";
        made.hair_on_the_day.colour = any(colours);
        made.hair_on_the_day.texture = any(textures);
        made.cautions = "none known";
        made.prep = {{"Setting mousse", "a walnut", "roots"}, {"Heat spray", "light", "lengths"}};
        made.sections = "Secure with " + any(pieces);
        made.parting = "side, on her left";
        for (int step = 1; step <= 6; ++step) {
            made.build.push_back(
                {"Tongs away from the face, section " + std::to_string(step), 5, {}});
            made.build.back().pins = {{"hair pin", "bronze", 4}};
        }
        made.accessory = any(pieces);
        made.finish = "Firm hairspray, an arm's length away.";
        made.feedback = "A little higher, please.";
        made.hands_on_minutes = 45;
        return made;
    }

    void add_photos(const Look& look, const Sitting& sitting) {
        LocalTime at = sitting.starts;
        const auto taken = [&](Photo photo) {
            return add_photo(std::move(photo), sitting, at += minutes(6));
        };
        for (const Angle side : sides) taken(tagged(look, Stage::before, side));
        for (int i = 0; i < 4; ++i) taken(tagged(look, Stage::during, further.back()));
        std::optional<PhotoId> shown;
        for (const Angle side : sides) shown = taken(tagged(look, Stage::after, side));
        for (const Angle angle : further) taken(tagged(look, Stage::after, angle));
        for (int i = 16; i < photos_of_a_sitting; ++i) taken(waiting(i));
        const auto consent = website_.find(look.client);
        if (consent != website_.end() && looks_ % 5 == 0) send_out(*shown, consent->second, at);
    }

    Photo tagged(const Look& look, Stage stage, Angle angle) {
        Photo photo;
        photo.tags.look = look.id;
        photo.tags.stage = stage;
        photo.tags.angle = angle;
        if (random_() % 20 == 0) photo.tags.note = "the " + any(pieces) + " sits low";
        return photo;
    }

    Photo waiting(int number) {
        Photo photo;
        if (number % 4 == 0) photo.flaws = {Flaw::out_of_focus};
        photo.suggestion = {Angle::back, Stage::after, "file name", "taken after the last gap"};
        return photo;
    }

    // Every two hundredth could not be placed.
    PhotoId add_photo(Photo photo, const Sitting& sitting, LocalTime taken) {
        if (++photos_ % 200 != 0) photo.tags.sitting = sitting.id;
        photo.file.name = "QTB_" + std::to_string(photos_) + ".jpg";
        const std::string day = iso_text(date_of(taken));
        photo.file.path = "photos/" + day.substr(0, 4) + '/' + day + " sitting " +
                          std::to_string(sitting.id.value) + '/' + photo.file.name;
        photo.file.sha256 = sha256(photo.file.name);
        photo.file.bytes = 4'000'000;
        photo.file.width = 1500;
        photo.file.height = 2000;
        photo.file.taken.emplace().local = taken;
        photo.measures = {5, 0, 0.5, 0, 0};
        photo.fingerprint = random_();
        photo.head_signs = {photo.tags.angle == Angle::front, false, false};
        const PhotoId id = library_.photos().add(photo);
        library_.credits().set(std::array{id}, Credit{});
        return id;
    }

    void send_out(PhotoId photo, ConsentId under, LocalTime at) {
        const auto sent = library_.photos().find(photo);
        Exported exported;
        exported.photo = photo;
        exported.photo_name = sent->file.name;
        exported.photo_sha256 = sent->file.sha256;
        exported.use = Use::website;
        exported.at = at;
        exported.file = "/website/" + sent->file.name;
        exported.sha256 = sha256(exported.file);
        exported.bytes = 200'000;
        exported.under = {under};
        library_.ledger().add(exported);
    }

    Library& library_;
    int wanted_;
    Date today_;
    std::mt19937 random_{20261107};
    std::map<ClientId, ConsentId> website_;
    int surplus_ = 0;
    int photos_ = 0;
    int weddings_ = 0;
    int clients_ = 0;
    int looks_ = 0;
};

// As the measure of a photo would be, and as long.
void measure_hair(Library& library) {
    Transaction all(library.database());
    std::mt19937 random{20261107};
    const auto shares = [&](std::size_t count) {
        HairLook::Shares result(count);
        for (auto& share : result) share = static_cast<std::uint8_t>(random());
        return result;
    };
    HairLookTable table(library.database(), hair_look_version);
    for (const Photo& photo : library.photos().these(table.still_to_measure())) {
        table.keep(photo, {shares(38), shares(288), shares(144)});
    }
    all.commit();
}

}  // namespace

void fill_library(Library& library, int photos, Date today) {
    Years(library, photos, today).fill();
    bring_pairs_up_to_date(library);
    measure_hair(library);
}

}  // namespace quarterturn
