#include "indexer/looks/exported_record.h"
#include "indexer/record/recipe_text.h"
#include "indexer/rules/sign_off.h"

namespace quarterturn {
namespace {

constexpr std::string_view privacy =
    "These photos show a person. Keep them safe, and use or pass them on only as she has allowed "
    "and\nas the law where you live asks. When she withdraws what she allowed, that goes for this "
    "copy too.\n";

class TextWriter {
  public:
    void heading(std::string_view text) {
        if (!text_.empty()) text_ += '\n';
        text_ += text;
        text_ += '\n';
        text_.append(text.size(), '-');
        text_ += '\n';
    }
    void line(std::string_view label, const std::string& value) {
        if (value.empty()) return;
        text_ += label;
        text_ += ": ";
        text_ += value;
        text_ += '\n';
    }
    void plain(std::string_view text) {
        text_ += text;
        text_ += '\n';
    }

    std::string text() && { return std::move(text_); }

  private:
    std::string text_;
};

std::string spoken(LocalTime time) {
    return iso_text(date_of(time)) + " " + clock_text(time);
}

void add_part(std::string& text, const std::string& part) {
    if (!part.empty()) text += (text.empty() ? "" : ", ") + part;
}

std::string wedding_text(const std::optional<Wedding>& wedding) {
    if (!wedding) return {};
    std::string text = wedding->name;
    add_part(text, iso_text(wedding->date));
    add_part(text, wedding->venue);
    if (!wedding->ready_by.empty()) add_part(text, "ready by " + wedding->ready_by);
    return text;
}

std::string sitting_text(const Sitting& sitting) {
    return std::string(word(sitting.kind)) + ", " + spoken(sitting.starts) +
           until_text(sitting.starts, sitting.ends);
}

void write_look(const ExportedRecord& record, TextWriter& writer) {
    const LookState& state = record.state;
    writer.heading("Record of a signed-off look");
    writer.line("Look", state.look.name);
    writer.line("Worn", std::string(word(state.look.worn)));
    writer.line("Client", state.client.name);
    writer.line("Role", record.role);
    writer.line("Wedding", wedding_text(state.wedding));
    for (const Sitting& sitting : record.sittings) writer.line("Sitting", sitting_text(sitting));
    writer.line("Signed off", spoken(state.sign_off->signed_at));
    writer.line("By", record.business_name);
    writer.line("Business", record.business_line);
    writer.plain("Left and right are the client's own.");
}

std::string file_of(const ExportedRecord& record, PhotoId id) {
    for (const ExportedPhoto& exported : record.photos) {
        if (exported.photo.id == id) return exported.file;
    }
    return {};
}

std::string verdict_text(const ExportedRecord& record, const CoverageLine& line) {
    switch (line.verdict) {
        case Coverage::covered:
            return file_of(record, *line.photo);
        case Coverage::waived:
            return "waived: " + line.waived_because;
        case Coverage::weak:
        case Coverage::missing:
            return gap_text(line) + " (" + std::string(word(line.wanted.need)) + ")";
    }
    return {};
}

void write_shots(const ExportedRecord& record, TextWriter& writer) {
    writer.heading("Shots");
    for (const CoverageLine& line : record.state.coverage.lines) {
        writer.line(shot_text(line.wanted.shot), verdict_text(record, line));
    }
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) add_part(text, word);
    return text;
}

void write_photo(const ExportedPhoto& exported, TextWriter& writer) {
    const Photo& photo = exported.photo;
    writer.plain(exported.file);
    writer.line("  Shows", sealed_tags(photo.tags));
    writer.line("  Also shows", joined(exported.also_shown));
    writer.line("  Taken", photo.moment ? spoken(*photo.moment) : "unknown");
    if (exported.file != "photos/" + photo.file.name) {
        writer.line("  Original name", photo.file.name);
    }
    writer.line("  Note", photo.tags.note);
}

void write_recipe(const Recipe& recipe, TextWriter& writer) {
    writer.heading("Recipe");
    for (const RecipePart& part : recipe_parts(recipe)) {
        if (part.lines.size() == 1) {
            writer.line(part.heading, part.lines.front());
            continue;
        }
        writer.plain(part.heading + ":");
        for (const std::string& line : part.lines) writer.plain("  " + line);
    }
}

}  // namespace

std::string record_text(const ExportedRecord& record) {
    TextWriter writer;
    write_look(record, writer);
    write_shots(record, writer);
    writer.heading("Photos");
    for (const ExportedPhoto& photo : record.photos) write_photo(photo, writer);
    if (record.state.recipe) write_recipe(record.state.recipe->recipe, writer);
    writer.heading("Privacy");
    writer.plain(privacy);
    return std::move(writer).text();
}

}  // namespace quarterturn
