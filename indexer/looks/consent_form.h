#pragma once
// The wording of the consent form: consent-form.txt in the library's folder, hers to change. A line
// that begins with "# " is a heading, one that begins with "! " stands in a frame; lines that stand
// together make a paragraph. [uses], [until] and [sign] alone in a line are the boxes to
// tick and the lines to fill in; {client}, {business}, {contact} and {date} are filled in.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

inline constexpr const char* consent_form_name = "consent-form.txt";

enum class FormPart { heading, framed, paragraph, uses, until, sign };

struct FormBlock {
    FormPart part = FormPart::paragraph;
    std::string words;
    bool by_hand = false;  // there to be filled in on paper: the wording has a line of "____"

    bool operator==(const FormBlock&) const = default;
};

struct FormFacts {
    std::string client;    // empty: a line to fill in
    std::string business;  // empty: a line to fill in
    std::string contact;   // likewise
    Date date{};
};

// The wording that comes with the program.
std::string_view usual_consent_form();

std::vector<FormBlock> form_blocks(std::string_view wording, const FormFacts& facts);

// As a client reads it on the form: "On my website".
std::string_view use_on_form(Use use);

// Her wording, else the usual one. Throws DiskError, and StoreError where the file is no text, or
// does not say where the uses are ticked and where she signs.
std::string consent_form_wording(Library& library);

// Writes the usual wording for her to change. Throws DiskError when it is there already.
Path write_consent_form_wording(Library& library);

}  // namespace quarterturn
