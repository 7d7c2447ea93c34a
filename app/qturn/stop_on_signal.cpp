#include "app/qturn/stop_on_signal.h"

#include <csignal>
#include <initializer_list>

namespace quarterturn {
namespace {

// Sent to the thread that waits, when nobody waits for a signal any more.
constexpr int wake_up = SIGUSR1;

sigset_t set_of(std::initializer_list<int> signals) {
    sigset_t set;
    sigemptyset(&set);
    for (const int signal : signals) sigaddset(&set, signal);
    return set;
}

// One of the set, or `wake_up` once that was sent by us.
int next_signal(const sigset_t& set, const std::stop_token& no_longer_needed) {
    int signal = wake_up;
    while (sigwait(&set, &signal) == 0) {
        if (signal != wake_up || no_longer_needed.stop_requested()) break;
    }
    return signal;
}

void wait_for_signal(const std::stop_token& no_longer_needed, std::stop_source stop) {
    const sigset_t any = set_of({SIGINT, SIGTERM, wake_up});
    if (next_signal(any, no_longer_needed) == wake_up) return;
    stop.request_stop();
    const sigset_t interrupts = set_of({SIGINT, SIGTERM});
    pthread_sigmask(SIG_UNBLOCK, &interrupts, nullptr);
    next_signal(set_of({wake_up}), no_longer_needed);
}

}  // namespace

StopOnSignal::StopOnSignal() {
    const sigset_t signals = set_of({SIGINT, SIGTERM, wake_up});
    pthread_sigmask(SIG_BLOCK, &signals, nullptr);
    waiter_ = std::jthread(wait_for_signal, stop_);
}

StopOnSignal::~StopOnSignal() {
    waiter_.request_stop();
    pthread_kill(waiter_.native_handle(), wake_up);
}

}  // namespace quarterturn
