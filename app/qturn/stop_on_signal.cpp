#include "app/qturn/stop_on_signal.h"

#include <csignal>
#include <ctime>

namespace quarterturn {
namespace {

sigset_t stop_signals() {
    sigset_t interrupts;
    sigemptyset(&interrupts);
    sigaddset(&interrupts, SIGINT);
    sigaddset(&interrupts, SIGTERM);
    return interrupts;
}

// Waits until a signal comes or nobody waits for one any more.
void wait_for_signal(const std::stop_token& no_longer_needed, std::stop_source stop) {
    const sigset_t interrupts = stop_signals();
    const timespec a_moment{0, 50'000'000};
    while (!no_longer_needed.stop_requested()) {
        if (sigtimedwait(&interrupts, nullptr, &a_moment) < 0) continue;
        stop.request_stop();
        pthread_sigmask(SIG_UNBLOCK, &interrupts, nullptr);
    }
}

}  // namespace

StopOnSignal::StopOnSignal() {
    const sigset_t interrupts = stop_signals();
    pthread_sigmask(SIG_BLOCK, &interrupts, nullptr);
    waiter_ = std::jthread(wait_for_signal, stop_);
}

}  // namespace quarterturn
