#pragma once
// The gate as a table: what stands against a photo, looked up by letters that say how things are.
// Days are walked one by one, as she would leaf through her diary, and nothing of the rules is
// used.

#include <algorithm>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "indexer/rules/gate.h"

namespace quarterturn {

// The obstacle's word, and the client's number or 0.
using Stands = std::multiset<std::pair<std::string, std::int64_t>>;

struct OracleRow {
    std::string_view letters;  // '.' is any
    std::string_view obstacle;
};

// said last (N nothing, G granted, D declined, W withdrawn); the day (b before it holds, i while,
// a after); a face shows (F, f); shown as (H hair only, W with her face); C a child, a grown, u not
// told; given by (G guardian, S herself); a child's role (R, r).
inline constexpr OracleRow rows_of_person[]{{"N......", "not asked"}, {"D......", "declined"},
                                            {"W......", "withdrawn"}, {"Gb.....", "not yet"},
                                            {"Ga.....", "ended"},     {"GiFH...", "face"},
                                            {"Gi..CS.", "child"},     {"Gi..u.R", "child's age"}};

// strangers (S, s); nobody in it (N, n); people named (P, 0); - not told whose, O own, P a
// photographer's, E somebody else's; licensed for the use (L, l); licence (i while, a after it);
// the line is known (K, k).
inline constexpr OracleRow rows_of_photo[]{
    {"S......", "strangers"},       {".n0....", "nobody named"}, {"...-...", "whose"},
    {"...E...", "somebody else's"}, {"...Pl..", "not licensed"}, {"...P.a.", "licence ended"},
    {"...P..k", "credit line"}};

inline bool fits(std::string_view letters, std::string_view row) {
    return std::ranges::equal(letters, row,
                              [](char is, char wanted) { return wanted == '.' || wanted == is; });
}

template <std::size_t N>
void look_up(const OracleRow (&rows)[N], const std::string& letters, std::int64_t client,
             Stands& stands) {
    for (const OracleRow& row : rows) {
        if (fits(letters, row.letters)) stands.emplace(row.obstacle, client);
    }
}

inline std::string letters_of(const ShownPerson& person, bool face, Use use, Date on) {
    using std::chrono::days;
    using std::chrono::sys_days;
    auto in_order = person.consents;
    std::ranges::sort(in_order, {}, [](const ConsentEntry& entry) { return entry.id.value; });
    char said = 'N', time = '-', shown = '-', age = 'u', giver = '-';
    bool child_later = false;
    if (in_order.empty())
        return {said,
                time,
                face ? 'F' : 'f',
                shown,
                age,
                giver,
                person.childs_role.empty() ? 'r' : 'R'};
    sys_days first = on, last = on;
    for (const auto& entry : in_order) {
        first = std::min(first, sys_days(entry.said_on));
        last = std::max(last, sys_days(entry.said_on));
    }
    // A yes that any no of the use was recorded after, or said on a later day, is out of the diary.
    const auto is_struck = [&](std::size_t place) {
        const ConsentEntry& yes = in_order[place];
        if (yes.said != ConsentSaid::granted) return false;
        for (std::size_t other = 0; other < in_order.size(); ++other) {
            const ConsentEntry& no = in_order[other];
            if (no.use != yes.use || no.said == ConsentSaid::granted) continue;
            if (other > place || no.said_on > yes.said_on) return true;
        }
        return false;
    };
    for (sys_days day = first; day <= last; day += days(1)) {
        for (std::size_t place = 0; place < in_order.size(); ++place) {
            const ConsentEntry& entry = in_order[place];
            if (sys_days(entry.said_on) != day) continue;
            const bool young = entry.age == AgeBand::up_to_14 || entry.age == AgeBand::at_15 ||
                               entry.age == AgeBand::at_16 || entry.age == AgeBand::at_17;
            const bool yet_to_come = day > sys_days(on);
            if (yet_to_come) child_later = child_later || young;
            if (entry.age && !yet_to_come) age = young ? 'C' : 'a';
            if (entry.use != use || is_struck(place)) continue;
            if (yet_to_come && entry.said == ConsentSaid::granted) continue;
            said = entry.said == ConsentSaid::granted    ? 'G'
                   : entry.said == ConsentSaid::declined ? 'D'
                                                         : 'W';
            time = 'i';
            if (entry.until && sys_days(*entry.until) < sys_days(on)) time = 'a';
            if (entry.from && sys_days(*entry.from) > sys_days(on)) time = 'b';
            shown = entry.shown == ShownAs::hair_only ? 'H' : 'W';
            giver = entry.giver == ConsentGiver::guardian ? 'G' : 'S';
        }
    }
    if (child_later) age = 'C';
    return {
        said, time, face ? 'F' : 'f', shown, age, giver, person.childs_role.empty() ? 'r' : 'R'};
}

inline std::string letters_of(const PhotoToShow& photo, Use use, Date on) {
    std::string letters{photo.strangers ? 'S' : 's', photo.nobody ? 'N' : 'n',
                        photo.people.empty() ? '0' : 'P'};
    if (!photo.credit) return letters + "----";
    const Credit& credit = *photo.credit;
    letters += credit.whose == Whose::own ? 'O' : credit.whose == Whose::photographer ? 'P' : 'E';
    letters += std::ranges::count(credit.licensed, use) > 0 ? 'L' : 'l';
    const bool over =
        credit.until && std::chrono::sys_days(*credit.until) < std::chrono::sys_days(on);
    letters += over ? 'a' : 'i';
    letters += credit.line ? 'K' : 'k';
    return letters;
}

inline Stands oracle_stands(const PhotoToShow& photo, Use use, Date on) {
    Stands stands;
    look_up(rows_of_photo, letters_of(photo, use, on), 0, stands);
    if (photo.nobody) return stands;
    for (const ShownPerson& person : photo.people) {
        look_up(rows_of_person, letters_of(person, photo.face_shows, use, on), person.client.value,
                stands);
    }
    return stands;
}

}  // namespace quarterturn
