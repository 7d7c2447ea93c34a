#include "indexer/sheet/phone_writer.h"

#include "indexer/looks/board_words.h"
#include "indexer/record/date_words.h"
#include "indexer/sheet/head_svg.h"
#include "indexer/sheet/html.h"
#include "indexer/sheet/join.h"
#include "indexer/sheet/phone_style.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

// Nothing is fetched, sent or run, whatever somebody writes into a recipe (CSP Level 3).
constexpr const char* policy =
    "default-src 'none'; img-src data:; style-src 'unsafe-inline'; base-uri 'none'; "
    "form-action 'none'";

// The words of a page, and the photos in the order in which they stand there.
class PhoneWriter {
  public:
    PhoneWriter(const WeddingBoard& board, Printed printed, std::span<const PhonePicture> pictures)
        : board_(board), printed_(std::move(printed)), pictures_(pictures) {}

    std::string write() {
        head();
        put("<header id=\"top\">\n");
        text("h1", board_.wedding.name);
        text("p", long_date(board_.wedding.date), "class=\"soft\"");
        text("p", "As it stood on " + long_date(date_of(printed_.now)) + " at " +
                      clock_text(printed_.now) + ".");
        text("p", whose(), "class=\"whose\"");
        index();
        put("</header>\n<main>\n");
        for (std::size_t i = 0; i < board_.clients.size(); ++i) client(i);
        put("</main>\n<footer>\n");
        text("p", whose());
        put("</footer>\n</body>\n</html>\n");
        return std::move(html_);
    }

  private:
    void put(std::string_view words) { html_ += words; }

    void text(std::string_view tag, const std::string& words, std::string_view attributes = {}) {
        if (words.empty()) return;
        html_.append("<").append(tag).append(" dir=\"auto\"");
        if (!attributes.empty()) html_.append(" ").append(attributes);
        html_.append(">").append(html_text(words)).append("</").append(tag).append(">\n");
    }

    void list(const std::vector<std::string>& lines, std::string_view attributes = {}) {
        if (lines.empty()) return;
        html_.append(attributes.empty() ? "<ul" : "<ul ").append(attributes).append(">\n");
        for (const std::string& line : lines) text("li", line);
        put("</ul>\n");
    }

    std::string whose() const {
        return (printed_.business.empty() ? std::string("This page is")
                                          : "This page is from " + printed_.business + ",") +
               " for the helpers of the day alone. It shows people: show it to nobody else, and "
               "delete it after the day.";
    }

    void head() {
        put("<!DOCTYPE html>\n<html lang=\"en\" dir=\"ltr\">\n<head>\n<meta charset=\"utf-8\">\n"
            "<meta http-equiv=\"Content-Security-Policy\" content=\"");
        put(policy);
        put("\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
            "<meta name=\"referrer\" content=\"no-referrer\">\n"
            "<meta name=\"robots\" content=\"noindex\">\n"
            "<meta name=\"color-scheme\" content=\"light dark\">\n"
            "<meta name=\"format-detection\" content=\"telephone=no\">\n<title>");
        put(html_text("Wedding board, " + board_.wedding.name));
        put("</title>\n<style>");
        put(phone_style);
        put("</style>\n</head>\n<body>\n");
    }

    void index() {
        if (board_.clients.size() < 2) return;
        put("<nav aria-label=\"Clients in the order of work\">\n<ol>\n");
        for (std::size_t i = 0; i < board_.clients.size(); ++i) {
            const BoardClient& each = board_.clients[i];
            put("<li><a href=\"#" + client_id(i) + "\"><bdi>" + html_text(each.client.name) +
                "</bdi> <span>" + html_text(ready_text(each)) + "</span></a></li>\n");
        }
        put("</ol>\n</nav>\n");
    }

    static std::string client_id(std::size_t index) {
        return "client-" + std::to_string(index + 1);
    }
    static std::string look_id(const std::string& client, std::size_t look) {
        return client + "-look-" + std::to_string(look + 1);
    }

    void link(const std::string& to, const std::string& words) {
        put("<li><a href=\"#" + to + "\">" + html_text(words) + "</a></li>\n");
    }

    // To what a client's part holds, and back to all of them.
    void ways(const BoardClient& each, const std::string& id) {
        put("<nav class=\"ways\" aria-label=\"" + html_text("Where to go, at " + each.client.name) +
            "\">\n<ul>\n");
        for (std::size_t i = 0; i < each.looks.size(); ++i) {
            const BoardLook& look = each.looks[i];
            const std::string of =
                each.looks.size() > 1 ? ", " + std::string(word(look.state.look.worn)) : "";
            link(look_id(id, i) + "-photos", "Photos" + of);
            if (!look.steps.empty()) link(look_id(id, i) + "-steps", "Steps" + of);
        }
        if (board_.clients.size() > 1) link("top", "All clients");
        put("</ul>\n</nav>\n");
    }

    void client(std::size_t index) {
        const BoardClient& each = board_.clients[index];
        const std::string id = client_id(index);
        put("<article id=\"" + id + "\" aria-labelledby=\"" + id + "-name\">\n");
        text("h2", each.client.name, "id=\"" + id + "-name\"");
        text("p", capitalised(each.role));
        text("p", capitalised(ready_text(each)), "class=\"ready\"");
        text("p", chair_text(board_, each));
        put("<section class=\"care\">\n<h3>Take care</h3>\n");
        list(each.cautions);
        put("</section>\n");
        if (each.looks.empty()) {
            text("p", "No look of hers is recorded for this wedding yet.");
        } else {
            ways(each, id);
        }
        for (std::size_t i = 0; i < each.looks.size(); ++i) {
            look(each, each.looks[i], look_id(id, i));
        }
        if (each.steps() == 0) {
            put("<p class=\"steps\">");
            tick(each.is_done(), "She is done");
            put("</p>\n");
        }
        put("</article>\n");
    }

    void look(const BoardClient& each, const BoardLook& shown, const std::string& id) {
        put("<section id=\"" + id + "\">\n");
        text("h3", look_words(shown.state.look));
        text("p", shown.standing +
                      (shown.state.sign_off && !shown.changes.empty() ? " Changed since:" : ""));
        list(shown.changes);
        angles(each, shown, id);
        if (shown.recipe() == nullptr) text("p", "No recipe of this look is written yet.");
        drawing(shown);
        parts("Before the build", shown.before_build, shown.before_build_cautions);
        steps(shown, id);
        parts("After the build", shown.after_build, shown.after_build_cautions);
        put("</section>\n");
    }

    void angles(const BoardClient& each, const BoardLook& shown, const std::string& id) {
        put("<div class=\"angles\" id=\"" + id +
            "-photos\" role=\"group\" tabindex=\"0\" aria-label=\"" +
            html_text("Photos of " + each.client.name + " from all angles, to swipe or scroll") +
            "\">\n");
        for (const BoardShot& shot : shown.shots) {
            put("<figure>");
            if (shot.photo)
                picture(each, shot);
            else
                text("div", shot.empty, "class=\"empty\"");
            put("<figcaption>" + html_text(caption(shot)) + "</figcaption></figure>\n");
        }
        put("</div>\n");
    }

    static std::string caption(const BoardShot& shot) {
        const bool turned = shot.photo && shot.photo->tags.mirrored;
        return capitalised(word(shot.angle)) +
               (turned ? " · from a mirror, shown the right way round" : "");
    }

    void picture(const BoardClient& each, const BoardShot& shot) {
        const PhonePicture* shown = next_ < pictures_.size() ? &pictures_[next_] : nullptr;
        ++next_;
        if (shown == nullptr || !shown->problem.empty()) {
            text("div", "This photo cannot be shown.", "class=\"empty\"");
            return;
        }
        put("<img width=\"" + std::to_string(shown->width) + "\" height=\"" +
            std::to_string(shown->height) + "\" alt=\"" +
            html_text("The look of " + each.client.name + ", " + std::string(word(shot.angle))) +
            "\" src=\"data:image/jpeg;base64,");
        put(base64(shown->jpeg));
        put("\">");
    }

    void drawing(const BoardLook& shown) {
        if (shown.recipe() == nullptr) return;
        const HeadDrawing drawing = drawing_with_accessories(*shown.recipe());
        if (drawing == HeadDrawing{}) return;
        put(head_svg(drawing));
        std::string marks;
        for (const PlanMark& mark : drawing.marks) {
            add_part(marks, " · ", std::to_string(mark.number) + " " + mark.words);
        }
        text("p", marks);
    }

    void parts(const char* heading, const std::vector<RecipePart>& shown,
               const std::vector<std::string>& cautions) {
        if (shown.empty()) return;
        text("h4", heading);
        list(cautions, "class=\"beside\"");
        put("<dl>\n");
        for (const RecipePart& part : shown) {
            if (part.heading == "Head plan") continue;  // drawn
            const bool accessory = part.heading == "Accessory";
            put(accessory ? "<dt class=\"accessory\">" : "<dt>");
            put(html_text(part.heading == "Feedback" ? "What she said" : part.heading) + "</dt>\n");
            for (const std::string& line : part.lines) {
                text("dd", line, accessory ? "class=\"accessory\"" : "");
            }
        }
        put("</dl>\n");
    }

    void steps(const BoardLook& shown, const std::string& id) {
        if (shown.steps.empty()) return;
        text("h4", "Build", "id=\"" + id + "-steps\"");
        put("<ol class=\"steps\">\n");
        for (std::size_t i = 0; i < shown.steps.size(); ++i) step(i, shown.steps[i]);
        put("</ol>\n");
        text("p", all_pins_text(shown), "class=\"count\"");
    }

    void tick(bool done, const std::string& words, const std::string& count = {}) {
        put("<label><input type=\"checkbox\" autocomplete=\"off\"");
        put(done ? " checked> <span dir=\"auto\">" : "> <span dir=\"auto\">");
        put(html_text(words));
        if (!count.empty()) put(" <span class=\"count\">" + html_text(count) + "</span>");
        put("</span></label>\n");
    }

    void step(std::size_t index, const BoardStep& shown) {
        std::string count = pins_count_text(shown);
        add_part(count, " · ", wait_text(shown));
        put("<li>");
        tick(shown.done, std::to_string(index + 1) + ". " + shown.words, count);
        list(shown.cautions, "class=\"beside\"");
        put("</li>\n");
    }

    const WeddingBoard& board_;
    Printed printed_;
    std::span<const PhonePicture> pictures_;
    std::size_t next_ = 0;
    std::string html_;
};

}  // namespace

std::string phone_html(const WeddingBoard& board, const Printed& printed,
                       std::span<const PhonePicture> pictures) {
    return PhoneWriter(board, printed, pictures).write();
}

}  // namespace quarterturn
